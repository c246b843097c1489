package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.reading.MidiBytes.Track;
import org.mantice.reading.TuneReadException.Reason;

/** Any bytes end in a tune or in one clear message; nothing of the window is loaded for it. */
class MidiBadInputTest {
    private static byte[] good() {
        Track melody = new Track()
                .name("Melody")
                .meter(0, 3, 2)
                .key(0, -2, true)
                .tempo(0, 600_000)
                .lyric(0, "la ");
        Track left = new Track().name("Left hand");
        for (int i = 0; i < 24; i++) {
            melody.note(1, 70 + i * 5 % 12, 480L * i, 480L * i + 400);
            left.note(2, 40 + i * 7 % 24, 480L * i, 480L * i + 300);
        }
        return MidiBytes.file(1, 480, melody, left);
    }

    private static TuneReadException refusal(byte[] bytes) {
        return catchThrowableOfType(
                TuneReadException.class, () -> new TuneReader().read("bad.mid", bytes, ReadOptions.DEFAULT));
    }

    @Test
    void otherKindsOfMidiFilesAreRefused() {
        byte[] patterns = good();
        patterns[9] = 2;
        byte[] frames = good();
        frames[12] = (byte) 0xe7;
        byte[] header = Arrays.copyOf(good(), 14);

        assertThat(refusal(patterns)).hasMessage("bad.mid: the MIDI file has format 2; allowed: 0 and 1");
        assertThat(refusal(frames).reason()).isEqualTo(Reason.MIDI_FRAMES);
        assertThat(refusal(header).reason()).isEqualTo(Reason.MIDI_TRUNCATED);
        assertThat(refusal("RIFF\0\0\0\0RMIDdata".getBytes()).reason()).isEqualTo(Reason.MIDI_TRUNCATED);
        assertThat(refusal(MidiBytes.file(1, 480, new Track().note(10, 40, 0, 480)))
                        .reason())
                .isEqualTo(Reason.NO_NOTES);
    }

    @Test
    void aMissingPartIsNamedWithThoseThatThereAre() {
        TuneReadException thrown = catchThrowableOfType(
                TuneReadException.class, () -> new TuneReader().read("bad.mid", good(), ReadOptions.ofPart("horn")));

        assertThat(thrown).hasMessage("bad.mid: there is no part \"horn\"; allowed: T1 (Melody), T2 (Left hand)");
    }

    @Test
    void aFileThatBreaksOffIsReadAsFarAsItGoes() {
        byte[] bytes = good();

        ReadTune read = new TuneReader().read("bad.mid", Arrays.copyOf(bytes, 200), ReadOptions.DEFAULT);

        assertThat(read.tune().hasNotes()).isTrue();
        assertThat(read.skipped()).extracting(Skipped::what).contains(SkippedWhat.TRACK_DAMAGED);
    }

    @Test
    void aTuneLongerThanAllowedIsRefused() {
        byte[] bytes = MidiBytes.file(1, 1, new Track().note(1, 60, 0, 1).note(1, 60, 200_000_000, 200_000_001));

        assertThat(refusal(bytes).reason()).isEqualTo(Reason.TOO_MANY_MEASURES);
    }

    @Test
    void aCrowdedFileIsReadInTime() {
        Track track = new Track();
        Random random = new Random(5);
        for (int i = 0; i < 100_000; i++) {
            long at = random.nextInt(4_000_000);
            track.note(1, random.nextInt(128), at, at + random.nextInt(2_000));
        }
        byte[] bytes = MidiBytes.file(1, 480, track);

        ReadTune read = Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(60), () -> new TuneReader().read("big.mid", bytes, ReadOptions.DEFAULT));

        assertThat(read.tune().hasNotes()).isTrue();
    }

    @Test
    void anyDamageEndsInATuneOrAMessage() {
        byte[] good = good();
        Random random = new Random(11);
        int tunes = 0;
        int refusals = 0;
        for (int i = 0; i < 1_500; i++) {
            byte[] bytes = damaged(good, random);
            try {
                ReadTune read = Assertions.assertTimeoutPreemptively(
                        Duration.ofSeconds(20), () -> new TuneReader().read("bad.mid", bytes, ReadOptions.DEFAULT));
                assertThat(read.tune().hasNotes()).isTrue();
                tunes++;
            } catch (TuneReadException e) {
                assertThat(e).hasMessageStartingWith("bad.mid");
                refusals++;
            }
        }

        assertThat(tunes).isGreaterThan(400);
        assertThat(refusals).isGreaterThan(40);
    }

    private static byte[] damaged(byte[] good, Random random) {
        byte[] bytes = good.clone();
        for (int j = random.nextInt(8); j >= 0; j--) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(4)) {
                case 0 -> bytes[at] = (byte) random.nextInt(256);
                case 1 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
                case 2 -> bytes = Arrays.copyOf(bytes, Math.max(8, at));
                default ->
                    System.arraycopy(
                            good, 0, bytes, at, Math.min(random.nextInt(40), Math.min(good.length, bytes.length - at)));
            }
        }
        return bytes;
    }

    /** Reads the file named by its argument, in a process of its own. */
    public static final class Reading {
        public static void main(String[] args) {
            new TuneReader().read(Path.of(args[0]));
        }
    }

    @Test
    void readingLoadsNoClassOfTheWindow(@TempDir Path folder) throws IOException, InterruptedException {
        Path file = Files.write(folder.resolve("tune.mid"), good());
        Path output = folder.resolve("classes.txt");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-verbose:class",
                "-cp",
                System.getProperty("java.class.path"),
                Reading.class.getName(),
                file.toString()));

        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();

        assertThat(process.waitFor()).isZero();
        List<String> loaded = Files.readAllLines(output);
        assertThat(loaded).anyMatch(line -> line.contains("org.mantice.reading.midi.MidiFile "));
        assertThat(loaded)
                .noneMatch(line -> line.contains(" java.awt.")
                        || line.contains(" javax.swing.")
                        || line.contains(" sun.awt.")
                        || line.contains(" javax.sound.")
                        || line.contains(" com.sun.media.sound."));
    }
}
