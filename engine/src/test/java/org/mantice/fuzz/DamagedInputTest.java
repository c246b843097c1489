package org.mantice.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.reading.MidiBytes;
import org.mantice.reading.MidiBytes.Track;

/**
 * The short part of the fuzzing: kept inputs as they are, then so many seeded changes of them with the words that the
 * fuzzer is given. What holds for all of them is in {@link ReadingCheck}.
 */
class DamagedInputTest {
    private static final int ROUNDS = Integer.getInteger("mantice.fuzz.rounds", 1_000);

    @ParameterizedTest
    @ValueSource(strings = {"Abc", "Midi", "MusicXml"})
    void damagedFilesAreRefusedOrUsable(String format) throws Exception {
        ReadingCheck check = new ReadingCheck("fuzz." + format);
        List<byte[]> inputs = inputs(format);
        Changes bytes = new Changes(20_111, inputs, words(format));
        Supplier<byte[]> changes = format.equals("MusicXml") ? new XmlChanges(20_112, longest(inputs), bytes) : bytes;

        int read = 0;
        for (byte[] input : inputs) check(check, input);
        for (int round = 0; round < ROUNDS; round++) if (check(check, changes.get())) read++;

        assertThat(read).as("of %d read", ROUNDS).isBetween(ROUNDS / 20, ROUNDS * 19 / 20);
    }

    private static boolean check(ReadingCheck check, byte[] bytes) {
        try {
            return assertTimeoutPreemptively(
                    Duration.ofSeconds(20), () -> check.check(bytes).isPresent());
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError("seen with " + Arrays.toString(bytes) + "\n" + text(bytes), e);
        }
    }

    private static String longest(List<byte[]> inputs) {
        byte[] longest = Collections.max(inputs, Comparator.comparingInt(input -> input.length));
        return new String(longest, StandardCharsets.UTF_8);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static List<byte[]> inputs(String format) throws IOException, URISyntaxException {
        if (format.equals("Midi")) return List.of(twoTracks(), MidiBytes.riff(oneTrack()));
        String ending = "." + format.toLowerCase(Locale.ROOT);
        List<byte[]> inputs = new ArrayList<>();
        try (Stream<Path> files = Files.list(resource("inputs"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList()) inputs.add(Files.readAllBytes(file));
        }
        assertThat(inputs).isNotEmpty();
        return inputs;
    }

    private static Path resource(String name) throws URISyntaxException {
        return Path.of(Objects.requireNonNull(DamagedInputTest.class.getResource(name), name)
                .toURI());
    }

    private static byte[] twoTracks() {
        Track melody =
                new Track().name("Melody").meter(0, 3, 2).key(0, -2, true).tempo(0, 600_000);
        Track left = new Track().name("Left hand").lyric(0, "la ");
        for (int i = 0; i < 24; i++) {
            melody.note(1, 70 + i * 5 % 12, 480L * i, 480L * i + 400);
            left.note(2, 40 + i * 7 % 24, 480L * i, 480L * i + 300);
        }
        return MidiBytes.file(1, 480, melody, left);
    }

    private static byte[] oneTrack() {
        Track track = new Track().meter(0, 6, 3).meter(576, 2, 2).tempo(288, 400_000);
        for (int i = 0; i < 16; i++)
            track.note(1, 60 + i % 5, 32L * i, 32L * i + 30).note(1, 64 + i % 7, 32L * i, 32L * i + 64);
        return MidiBytes.file(0, 96, track);
    }

    /** Words as libFuzzer writes them: in quotes, with backslashes before quotes, backslashes and two digits of a byte. */
    private static List<byte[]> words(String format) throws IOException, URISyntaxException {
        List<byte[]> words = new ArrayList<>();
        for (String line : Files.readAllLines(resource(format + ".dict"))) {
            if (!line.startsWith("\"")) continue;
            StringBuilder word = new StringBuilder();
            for (int i = 1; i < line.length() - 1; i++) {
                if (line.charAt(i) != '\\') word.append(line.charAt(i));
                else if (line.charAt(++i) != 'x') word.append(line.charAt(i));
                else {
                    word.append((char) HexFormat.fromHexDigits(line, i + 1, i + 3));
                    i += 2;
                }
            }
            words.add(word.toString().getBytes(StandardCharsets.ISO_8859_1));
        }
        assertThat(words).hasSizeGreaterThan(20);
        return words;
    }
}
