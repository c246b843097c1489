package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starts the launcher in a JVM of its own, where there is no display or a dead one. */
class NoDisplayTest {
    /** A number that nobody gives to a display. */
    private static final String DEAD_DISPLAY = ":4711";

    @TempDir
    Path folder;

    private record Run(int code, String out, String err) {}

    @Test
    void headlessStartWithoutArgumentsSaysSoAndPlansTheExample() throws Exception {
        Run run = run(Map.of(), List.of("-Djava.awt.headless=true"));

        assertThat(run.code()).isZero();
        assertThat(run.err().lines())
                .singleElement()
                .asString()
                .startsWith("There is no display, so here is the command line: ");
        assertThat(run.out()).contains("Lanterns at the Weir");
    }

    @Test
    void startWithADeadDisplaySaysSoAndPlansTheExample() throws Exception {
        Run run = run(Map.of("DISPLAY", DEAD_DISPLAY), List.of("-Djava.awt.headless=false"));

        assertThat(run.code()).isZero();
        assertThat(run.err().lines())
                .singleElement()
                .asString()
                .startsWith("There is no display, so here is the command line: ");
        assertThat(run.out()).contains("Lanterns at the Weir");
    }

    @Test
    void theVerbWithoutADisplayIsAWrongCall() throws Exception {
        Run run = run(Map.of("DISPLAY", DEAD_DISPLAY), List.of("-Djava.awt.headless=false"), "window", "--dark");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("There is no display").contains("--help");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void wrongOptionsOfTheVerbAreNamed() throws Exception {
        assertThat(run(Map.of(), List.of(), "window", "--language", "xx").err()).contains("xx", "en, de");
        assertThat(run(Map.of(), List.of(), "window", "--dark", "--light").code())
                .isEqualTo(2);
        assertThat(run(Map.of(), List.of(), "window", "--accordion", "none").err())
                .contains("none");
    }

    /** The parts for windows cost time and memory that a verb of the command line does not need. */
    @Test
    void planningOnTheCommandLineLoadsNothingOfWindows() throws Exception {
        Path tune = Path.of(System.getProperty("mantice.root", ".."), "examples/tunes/the-rusty-gate.musicxml");

        Run run = run(Map.of(), List.of("-Xlog:class+load:stdout"), "plan", tune.toString());

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("org.mantice.app.Main ");
        assertThat(run.out()
                        .lines()
                        .filter(line -> line.matches(".*\\b(java\\.awt|javax\\.swing|sun\\.awt|com\\.formdev)\\..*")))
                .isEmpty();
    }

    private Run run(Map<String, String> environment, List<String> options, String... arguments)
            throws IOException, InterruptedException {
        List<String> call = new ArrayList<>();
        call.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        call.addAll(options);
        call.addAll(List.of("-classpath", System.getProperty("java.class.path"), "org.mantice.app.Main"));
        call.addAll(List.of(arguments));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder =
                new ProcessBuilder(call).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().keySet().removeAll(List.of("DISPLAY", "JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("ends in time").isTrue();
        return new Run(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
