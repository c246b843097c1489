package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Very long tunes are planned in little memory, in a process of their own. */
class LongTuneIT {
    /** Only against a hang: such a tune takes seconds. */
    private static final int HANGS_AFTER_SECONDS = 120;

    @TempDir
    Path folder;

    @Test
    void twoThousandMeasuresAsPlayedArePlannedAndWrittenInAHeapOf256Megabytes()
            throws IOException, InterruptedException {
        Path plans = folder.resolve("plans");

        planIn256Megabytes(100, 20, "--out", plans.toString());

        assertThat(plans.resolve("long.plan.json")).isNotEmptyFile();
    }

    @Test
    void twoThousandMeasuresAsWrittenArePlannedInAHeapOf256Megabytes() throws IOException, InterruptedException {
        planIn256Megabytes(2_000, 1);
    }

    private void planIn256Megabytes(int written, int times, String... more) throws IOException, InterruptedException {
        Path tune = folder.resolve("long.musicxml");
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Files.writeString(tune, InventedTune.musicXml(written, 5));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of("plan", tune.toString(), "--alternatives", "1", "--times", String.valueOf(times)));
        command.addAll(List.of(more));

        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        boolean ended = process.waitFor(HANGS_AFTER_SECONDS, TimeUnit.SECONDS);
        if (!ended) process.destroyForcibly();

        System.out.printf(
                "%d measures %d times through in 256 MB: %.1f s%n", written, times, (System.nanoTime() - start) / 1e9);
        assertThat(ended).as("ended within %d s", HANGS_AFTER_SECONDS).isTrue();
        assertThat(process.exitValue()).as(Files.readString(err)).isZero();
        assertThat(Files.readString(out)).contains("The Long Way Round", "best");
    }
}
