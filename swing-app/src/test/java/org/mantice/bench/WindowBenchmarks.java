package org.mantice.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.mantice.app.window.Display;
import org.mantice.rule.RuleSet;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs the benchmarks of the window and prints tables; with a file name as argument also writes them there. Needs a
 * display.
 */
public final class WindowBenchmarks {
    private static final int STARTS = 10;
    private static final int COLD_STARTS = 10;
    private static final int MEDIAN = 50;

    private final StringBuilder text = new StringBuilder("# Benchmarks of the window\n\n");

    private WindowBenchmarks() {}

    public static void main(String[] args) throws RunnerException, IOException {
        Optional<String> none = Display.problem();
        if (none.isPresent()) {
            System.err.println("The benchmarks open windows and need a display (" + none.get()
                    + "): where there is none, put xvfb-run -a before the command.");
            System.exit(2);
        }
        WindowBenchmarks benchmarks = new WindowBenchmarks();
        benchmarks.head();
        benchmarks.starts();
        benchmarks.events();
        benchmarks.sheets();
        benchmarks.weights();
        System.out.println(benchmarks.text);
        if (args.length == 0) return;
        Files.createDirectories(Path.of(args[0]).toAbsolutePath().getParent());
        Files.writeString(Path.of(args[0]), benchmarks.text);
    }

    private void head() throws IOException {
        text.append(
                        "Printed by `mvn -ntp -q -Pbench-window` on a display, or `xvfb-run -a mvn -ntp -q -Pbench-window`. ")
                .append("Medians; ratios are what counts. The tune is invented and has 64 measures.\n\n");
        text.append(Benchmarks.machine());
        text.append("- Load, said before each part: how many programs wanted a processor in the minute before. The ")
                .append("benchmarks' own programs are among them; more than the processor has cores means waiting.\n");
    }

    private void load() throws IOException {
        Path average = Path.of("/proc/loadavg");
        text.append(Files.isReadable(average) ? Files.readString(average).split(" ")[0] : "unknown")
                .append("\n\n");
    }

    private void part(String title) throws IOException {
        text.append("\n## ").append(title).append("\n\nLoad: ");
        load();
    }

    private void row(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private void starts() throws IOException {
        part("From the start of the program, " + STARTS + " starts each in turn");
        StartTimes times = StartTimes.of(STARTS, EmptyFrame.class, WholeStart.class);
        double empty = times.median(EmptyFrame.class, StartTimes.PAINTED);
        double sheet = times.median(WholeStart.class, StartTimes.PAINTED);
        double plan = times.median(WholeStart.class, StartTimes.PLANNED);
        text.append("| until | ms | times the empty frame |\n|---|---|---|\n");
        row("| an empty frame of our look is painted | %.0f | 1 |", empty);
        row("| the app shows the staff of the example | %.0f | %.2f (at most 2) |", sheet, sheet / empty);
        row("| the app shows the first plan | %.0f | %.2f |", plan, plan / empty);
    }

    private void events() throws IOException {
        part("The event that keeps the window's thread longest");
        Path home = Files.createTempDirectory("mantice-bench");
        Path tune = home.resolve("invented.musicxml");
        Files.writeString(tune, InventedPlans.musicXml(), StandardCharsets.UTF_8);
        text.append("| during | processor ms | ms | event |\n|---|---|---|---|\n");
        for (String row : LongestEvents.rows(
                StartTimes.program(LongestEvents.class, home, tune.toString()).start()))
            text.append(row).append('\n');
    }

    private static ChainedOptionsBuilder options(Class<?> benchmark) {
        return new OptionsBuilder().include(benchmark.getName()).jvmArgs("-Xmx1g", "-Djava.awt.headless=true");
    }

    private static ChainedOptionsBuilder warm(Class<?> benchmark) {
        return options(benchmark)
                .forks(1)
                .warmupIterations(4)
                .warmupTime(TimeValue.seconds(2))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(2));
    }

    /** Medians by the benchmark's method and parameters. */
    private static Map<String, Double> medians(Collection<RunResult> results) {
        Map<String, Double> medians = new TreeMap<>();
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark();
            StringBuilder key = new StringBuilder(name.substring(name.lastIndexOf('.') + 1));
            for (String parameter : result.getParams().getParamsKeys())
                key.append(' ').append(result.getParams().getParam(parameter));
            medians.put(
                    key.toString(), result.getPrimaryResult().getStatistics().getPercentile(MEDIAN));
        }
        return medians;
    }

    private void sheets() throws RunnerException, IOException {
        part("First paint of the sheet, laid out and painted");
        Map<String, Double> warm = medians(new Runner(warm(SheetBenchmark.class).build()).run());
        Map<String, Double> cold = medians(new Runner(options(SheetBenchmark.class)
                        .mode(Mode.SingleShotTime)
                        .param("bands", "0", "1")
                        .forks(COLD_STARTS)
                        .warmupIterations(0)
                        .measurementIterations(1)
                        .build())
                .run());
        text.append("\"First call\": in a fresh Java, fonts and classes not yet loaded. A screen is ")
                .append(SheetBenchmark.WIDTH)
                .append(" by ")
                .append(SheetBenchmark.SCREEN)
                .append(
                        " pixels.\n\n| what | bare staff ms | one plan ms | ratio (at most 3) | two plans ms | four plans ms |\n")
                .append("|---|---|---|---|---|---|\n");
        for (String method : new String[] {"whole", "screen"})
            row(
                    "| %s | %.1f | %.1f | %.2f | %.1f | %.1f |",
                    method.equals("whole") ? "the whole sheet" : "a screen of it",
                    warm.get(method + " 0"),
                    warm.get(method + " 1"),
                    warm.get(method + " 1") / warm.get(method + " 0"),
                    warm.get(method + " 2"),
                    warm.get(method + " 4"));
        for (String method : new String[] {"whole", "screen"})
            row(
                    "| %s, first call | %.0f | %.0f | %.2f | | |",
                    method.equals("whole") ? "the whole sheet" : "a screen of it",
                    cold.get(method + " 0"),
                    cold.get(method + " 1"),
                    cold.get(method + " 1") / cold.get(method + " 0"));
    }

    private void weights() throws RunnerException, IOException {
        part("From a changed weight to the changed plan in a picture of the whole planner");
        Map<String, Double> warm =
                medians(new Runner(warm(WeightPaintBenchmark.class).build()).run());
        text.append("| a weight of | ms | wished for |\n|---|---|---|\n");
        for (RuleSet set : RuleSet.values())
            row(
                    "| %s | %.1f | 50 |",
                    set.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    warm.get("paintedAfterChange " + set.name()));
    }
}
