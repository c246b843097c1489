package org.mantice.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Plans whole folders of tunes by the command line as anybody would, and reads them beside another reader of ABC, which
 * npm fetches for it and which is part of nothing here. Prints a table, and writes it to a file.
 */
public final class CollectionBenchmark {
    private static final String OTHER = "abcjs@6.7.2";
    private static final String ACCORDION = "standard-34-key-72-bass";
    private static final int PASSES = 10;
    /** Leaves room for all that is not heap. */
    private static final String HEAP = "-Xmx320m";

    private final Path work;
    private final List<Path> folders;
    private final List<Path> tunes = new ArrayList<>();
    private final StringBuilder text = new StringBuilder("# Benchmark of collections\n\n");

    private CollectionBenchmark(List<Path> folders) throws IOException {
        this.work = Files.createTempDirectory("mantice-bench");
        this.folders = folders;
        for (Path folder : folders)
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(file -> file.toString().endsWith(".abc")).sorted().forEach(tunes::add);
            }
    }

    /** @param args file to write to; the built jar of the command line; a folder of folders; names of those, one or more */
    public static void main(String[] args) throws IOException, InterruptedException {
        List<Path> folders = Arrays.stream(args)
                .skip(3)
                .map(name -> Path.of(args[2], name).toAbsolutePath())
                .toList();
        CollectionBenchmark benchmark = new CollectionBenchmark(folders);
        benchmark.head();
        benchmark.plan(Path.of(args[1]));
        benchmark.read();
        System.out.println(benchmark.text);
        Files.writeString(Path.of(args[0]), benchmark.text);
    }

    private void head() throws IOException {
        text.append(
                        "Printed by `mvn -ntp -q package -DskipTests -Pbench-collection`; needs the corpus, and npm for the ")
                .append("second table. ")
                .append(tunes.size())
                .append(" tunes in ABC.\n\n")
                .append(Benchmarks.machine())
                .append("- Load: how many programs wanted a processor in the minute before; more than there are cores ")
                .append("means waiting.\n");
    }

    private static String load() throws IOException {
        Path average = Path.of("/proc/loadavg");
        return Files.isReadable(average) ? Files.readString(average).split(" ")[0] : "unknown";
    }

    private void plan(Path jar) throws IOException, InterruptedException {
        text.append("\n## Read and planned by the command line, ")
                .append(HEAP)
                .append("\n\n| plans a tune | seconds (aim 60) | seconds of processors | peak memory of the process, ")
                .append("MB (aim 512) | load at the start |\n|---|---|---|---|---|\n");
        String said = plan(jar, 1);
        plan(jar, 3);
        text.append("\nIt said: ").append(said).append(".\n");
    }

    /**
     * All folders in one call.
     *
     * @return what the program says at its end
     */
    private String plan(Path jar, int plans) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                java(),
                HEAP,
                "-jar",
                jar.toAbsolutePath().toString(),
                "plan",
                "--accordion=" + ACCORDION,
                "--alternatives=" + plans));
        folders.forEach(folder -> command.add(folder.toString()));
        String load = load();
        long start = System.nanoTime();
        Process process = program(command, "plan");
        long peakKilobytes = 0;
        Duration processor = Duration.ZERO;
        while (!process.waitFor(20, TimeUnit.MILLISECONDS)) {
            peakKilobytes = Math.max(peakKilobytes, peakKilobytes(process));
            processor = process.info().totalCpuDuration().orElse(processor);
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        List<String> said = Files.readAllLines(work.resolve("plan.err"));
        if (process.exitValue() != 0) throw new IllegalStateException(String.join("\n", said));
        row("| %d | %.1f | %.1f | %d | %s |", plans, seconds, processor.toMillis() / 1e3, peakKilobytes / 1024, load);
        return said.get(said.size() - 1);
    }

    /** High-water mark of the resident memory; 0 where the system does not tell. */
    private static long peakKilobytes(Process process) {
        try (Stream<String> lines = Files.lines(Path.of("/proc", String.valueOf(process.pid()), "status"))) {
            return lines.filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException | RuntimeException e) {
            return 0; // the process has just ended
        }
    }

    private void read() throws IOException, InterruptedException {
        Path names = work.resolve("names");
        Files.write(names, tunes.stream().map(Path::toString).toList());
        text.append("\n## Reading alone, from memory, one thread\n\nLoad: ")
                .append(load())
                .append("\n\n| reader | first pass ms | fastest of ")
                .append(PASSES)
                .append(" passes ms |\n|---|---|---|\n");
        String passes = String.valueOf(PASSES);
        times(
                "ours",
                program(
                        List.of(
                                java(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                ReadingTimes.class.getName(),
                                passes,
                                names.toString()),
                        "ours"),
                "ours");
        Path script = work.resolve("abcjs-reading.js");
        try (var in = Objects.requireNonNull(getClass().getResourceAsStream("abcjs-reading.js"))) {
            Files.copy(in, script);
        }
        Process fetch = program(List.of("npm", "install", "--silent", "--prefix", work.toString(), OTHER), "npm");
        if (fetch.waitFor() != 0) throw new IllegalStateException("npm cannot fetch " + OTHER);
        times(OTHER, program(List.of("node", script.toString(), passes, names.toString()), "other"), "other");
    }

    private void times(String reader, Process process, String name) throws IOException, InterruptedException {
        if (process.waitFor() != 0) throw new IllegalStateException(Files.readString(work.resolve(name + ".err")));
        List<Double> passes = Files.readAllLines(work.resolve(name + ".out")).stream()
                .map(Double::valueOf)
                .toList();
        row(
                "| %s | %.0f | %.0f |",
                reader,
                passes.get(0),
                passes.stream().mapToDouble(Double::doubleValue).min().orElseThrow());
    }

    private Process program(List<String> command, String name) throws IOException {
        File out = work.resolve(name + ".out").toFile();
        return new ProcessBuilder(command)
                .redirectOutput(out)
                .redirectError(work.resolve(name + ".err").toFile())
                .start();
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private void row(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
