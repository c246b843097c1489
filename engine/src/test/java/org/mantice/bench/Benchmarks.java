package org.mantice.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.mantice.search.StrokeAnswer;
import org.mantice.search.StrokeQuery;
import org.mantice.search.StrokeSearch;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs the benchmarks of the search and prints a table; with a file name as argument also writes it there.
 */
public final class Benchmarks {
    /** The percentile that is compared, the fastest sample: it suffers least from whatever else the machine does. */
    private static final int FAST = 0;

    private Benchmarks() {}

    public static void main(String[] args) throws RunnerException, IOException {
        var options = new OptionsBuilder()
                .include(PathBenchmark.class.getName())
                .include(LibraryBenchmark.class.getName())
                .include(StrokeBenchmark.class.getName())
                .forks(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(1))
                .jvmArgs("-Xmx1g")
                .build();
        String table = table(new Runner(options).run());
        System.out.println(table);
        if (args.length > 0) Files.writeString(Path.of(args[0]), table);
    }

    private static String table(Collection<RunResult> results) throws IOException {
        Map<String, Double> times = new TreeMap<>();
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark();
            String parameter = result.getParams().getParamsKeys().stream()
                    .map(key -> result.getParams().getParam(key))
                    .findFirst()
                    .orElseThrow();
            times.put(
                    name.substring(name.lastIndexOf('.') + 1) + " " + parameter,
                    result.getPrimaryResult().getStatistics().getPercentile(FAST));
        }
        StringBuilder text = new StringBuilder("# Benchmarks of the search\n\n");
        text.append("Printed by `mvn -ntp -q -pl engine -Pbench test-compile exec:exec@bench`; ")
                .append("fastest samples, one fork. Ratios are what counts.\n\n");
        text.append(machine()).append('\n');
        paths(text, times);
        strokes(text, times);
        budget(text);
        return text.toString();
    }

    private static void paths(StringBuilder text, Map<String, Double> times) {
        text.append("## Eight best paths, ")
                .append(HandLikeLattice.STATES)
                .append(" states a note, ")
                .append(HandLikeLattice.STATES * HandLikeLattice.MOVES)
                .append(" moves between notes\n\n")
                .append(
                        "| notes | eight best ms | plain loop, cost only ms | ratio (at most 2) | JGraphT Eppstein ms |\n")
                .append("|---|---|---|---|---|\n");
        for (String notes : new String[] {"300", "3000"}) {
            double ours = times.get("eightBest " + notes);
            double plain = times.get("plainLoop " + notes);
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %.2f | %.2f | %.2f | %s |%n",
                    notes,
                    ours,
                    plain,
                    ours / plain,
                    library(times, notes)));
        }
        text.append(String.format(
                Locale.ROOT,
                "%nGrowth from 300 to 3,000 notes (at most 12-fold): %.1f-fold.%n%n",
                times.get("eightBest 3000") / times.get("eightBest 300")));
    }

    private static String library(Map<String, Double> times, String notes) {
        Double time = times.get("graphLibrary " + notes);
        return time == null ? "not run" : String.format(Locale.ROOT, "%.0f", time);
    }

    private static void strokes(StringBuilder text, Map<String, Double> times) {
        text.append("## Eight best stroke plans, 300 places\n\n")
                .append("The plain loop goes over the same strokes, directions and number of steps of the opening as ")
                .append("our bound, and gives one cost; ours includes asking the lattice.\n\n")
                .append("| measures that fill the bellows | eight best ms | plain loop ms | ratio (at most 3) |\n")
                .append("|---|---|---|---|\n");
        for (String measures : new String[] {"2", "0.5"}) {
            double ours = times.get("eightBest " + measures);
            double plain = times.get("plainLoop " + measures);
            text.append(
                    String.format(Locale.ROOT, "| %s | %.1f | %.1f | %.2f |%n", measures, ours, plain, ours / plain));
        }
    }

    private static void budget(StringBuilder text) {
        text.append("\n## Where the label budget ends (")
                .append(StrokeQuery.DEFAULT_LABEL_BUDGET)
                .append(" labels, eight plans)\n\n")
                .append(
                        "| places | measures that fill the bellows | labels | proven | best plan at most above the bound |\n")
                .append("|---|---|---|---|---|\n");
        for (int places : new int[] {300, 600, 900, 1200})
            for (double measures : new double[] {0.5, 1, 2, 4}) {
                StrokeAnswer answer = StrokeSearch.of(new BellowsLikeLattice(places, measures, false))
                        .answer(StrokeQuery.best(8));
                double share = answer.plans().isEmpty()
                        ? 0
                        : 100.0 * answer.gap(0) / answer.plans().get(0).cost();
                text.append(String.format(
                        Locale.ROOT,
                        "| %d | %.1f | %d | %d of %d | %s |%n",
                        places,
                        measures,
                        answer.labels(),
                        answer.proven(),
                        answer.plans().size(),
                        answer.gap(0) == 0 ? "none" : String.format(Locale.ROOT, "%.1f %%", share)));
            }
    }

    /** Two lines of a list: on what the benchmarks ran. */
    static String machine() throws IOException {
        return "- Processor: " + processor() + ", " + Runtime.getRuntime().availableProcessors() + " cores\n- Java: "
                + System.getProperty("java.vm.name") + ' ' + System.getProperty("java.runtime.version") + '\n';
    }

    private static String processor() throws IOException {
        Path info = Path.of("/proc/cpuinfo");
        if (!Files.isReadable(info)) return System.getProperty("os.arch");
        try (var lines = Files.lines(info)) {
            return lines.filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse(System.getProperty("os.arch"));
        }
    }
}
