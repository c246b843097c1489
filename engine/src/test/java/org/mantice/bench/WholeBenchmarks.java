package org.mantice.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.plugin.Packs;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.util.Statistics;

/** Runs the benchmarks of whole tunes and prints a table; with a file name as argument also writes it there. */
public final class WholeBenchmarks {
    /** Runs in which the arrival of each plan is timed, the first of them to warm up. */
    private static final int RUNS = 25;

    private static final int WARM_AFTER = 10;

    private WholeBenchmarks() {}

    public static void main(String[] args) throws RunnerException, IOException {
        var options = new OptionsBuilder()
                .include(WholeBenchmark.class.getName())
                .include(WeightBenchmark.class.getName())
                .forks(1)
                .warmupIterations(5)
                .warmupTime(TimeValue.seconds(2))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(2))
                .jvmArgs("-Xmx1g")
                .build();
        String table = table(new Runner(options).run());
        System.out.println(table);
        if (args.length > 0) Files.writeString(Path.of(args[0]), table);
    }

    private static String table(Collection<RunResult> results) throws IOException {
        StringBuilder text = new StringBuilder("# Benchmarks of whole tunes\n\n");
        text.append("Printed by `mvn -ntp -q -pl engine -Pbench test-compile exec:exec@bench-whole`; one fork. ")
                .append(
                        "All four layers with all their rules, an invented reel of 64 measures played three times.\n\n");
        text.append(Benchmarks.machine());
        text.append("- Music: ")
                .append(new Planner(Packs.ofClassPath().providers())
                        .prepare(WholeBenchmark.request(1))
                        .performance()
                        .treble()
                        .size())
                .append(" moments of the right hand\n\n");
        text.append("| what | fastest ms | median ms | target ms |\n|---|---|---|---|\n");
        for (RunResult result : results) {
            String parameter = result.getParams().getParamsKeys().stream()
                    .map(key -> result.getParams().getParam(key))
                    .findFirst()
                    .orElseThrow();
            Statistics times = result.getPrimaryResult().getStatistics();
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %.1f | %.1f | %s |%n",
                    what(parameter),
                    times.getPercentile(0),
                    times.getPercentile(50),
                    target(parameter)));
        }
        arrivals(text);
        return text.toString();
    }

    private static String what(String parameter) {
        return switch (parameter) {
            case "1" -> "best plan";
            case "4" -> "four alternatives";
            default ->
                "after a change of weight: "
                        + parameter.toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    private static String target(String parameter) {
        return switch (parameter) {
            case "1" -> "150";
            case "4" -> "1,000";
            default -> "16";
        };
    }

    /** When each plan arrived after the question, in the run that ended first. */
    private static void arrivals(StringBuilder text) {
        Planner planner = new Planner(Packs.ofClassPath().providers());
        PlanRequest request = WholeBenchmark.request(4);
        List<Long> best = List.of();
        List<String> labels = List.of();
        for (int run = 0; run < RUNS; run++) {
            List<Long> times = new ArrayList<>();
            List<String> names = new ArrayList<>();
            long start = System.nanoTime();
            planner.plan(
                    request,
                    plan -> {
                        times.add(System.nanoTime() - start);
                        names.add(plan.label());
                    },
                    () -> false);
            if (run < WARM_AFTER) continue;
            if (best.isEmpty() || times.get(times.size() - 1) < best.get(best.size() - 1)) best = times;
            labels = names;
        }
        text.append("\nPlans arrive one by one; in the fastest of ")
                .append(RUNS - WARM_AFTER)
                .append(" warm runs after:\n\n| plan | ms |\n|---|---|\n");
        for (int plan = 0; plan < best.size(); plan++)
            text.append(String.format(Locale.ROOT, "| %s | %.1f |%n", labels.get(plan), best.get(plan) / 1e6));
    }
}
