package org.mantice.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Times whole programs from their start, each in a process of its own with a home of its own. */
final class StartTimes {
    /** What a program says when its first picture is painted. */
    static final String PAINTED = "painted";

    /** What it says when the first plan is. */
    static final String PLANNED = "planned";

    private final Map<String, List<Double>> times = new HashMap<>();

    /** Starts the programs in turn, so often, and notes when each says what. */
    static StartTimes of(int runs, Class<?>... programs) throws IOException {
        StartTimes times = new StartTimes();
        for (int run = 0; run < runs; run++) for (Class<?> program : programs) times.run(program);
        return times;
    }

    private void run(Class<?> program) throws IOException {
        Path home = Files.createTempDirectory("mantice-bench");
        long start = System.nanoTime();
        Process process = program(program, home).start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String said = out.readLine(); said != null; said = out.readLine())
                times.computeIfAbsent(program.getSimpleName() + " " + said, fresh -> new ArrayList<>())
                        .add((System.nanoTime() - start) / 1e6);
        } finally {
            process.destroyForcibly();
        }
    }

    /** A program with our class path that keeps its things in this folder. */
    static ProcessBuilder program(Class<?> program, Path home, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        command.addAll(Arrays.asList(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().put("HOME", home.toString());
        builder.environment().put("APPDATA", home.toString());
        builder.environment().put("XDG_CONFIG_HOME", home.resolve("config").toString());
        builder.environment().put("XDG_STATE_HOME", home.resolve("state").toString());
        return builder;
    }

    /** Milliseconds from the start of a program until it says something. */
    double median(Class<?> program, String said) {
        double[] sorted = times.getOrDefault(program.getSimpleName() + " " + said, List.of()).stream()
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        if (sorted.length == 0) throw new IllegalStateException(program.getSimpleName() + " never said " + said);
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }
}
