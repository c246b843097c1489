package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.sound.midi.InvalidMidiDataException;
import org.junit.jupiter.api.Test;
import org.mantice.tune.PlacedChord;

/** Reads collections of tunes that nobody on the team wrote. */
class AbcCorpusTest {
    private static final String[] FOLDERS = {"abc-flyingcat", "abc-nottingham"};

    private final TuneReader reader = new TuneReader();

    @Test
    void everyTuneIsReadWithEveryNote() throws IOException {
        for (String folder : FOLDERS)
            for (Corpus.Numbered file : Corpus.files(folder, ".abc")) {
                String text = Files.readString(file.path(), StandardCharsets.UTF_8);

                ReadTune read = Abc.read(PlainAbc.withoutOrder(text));

                assertThat(Abc.notes(read) + Abc.count(read, SkippedWhat.DOUBLED_NOTE))
                        .as(file.toString())
                        .isEqualTo(PlainAbc.firstTune(text).notes());
            }
    }

    /** Counted in the text apart from our reader: two quoted chords in a row, and quoted chords in brackets. */
    @Test
    void everySecondChordAtANoteAndEveryOneInBracketsIsKept() throws IOException {
        Pattern two = Pattern.compile("\"[A-G][^\"]*\" *\"[A-G][^\"]*\"|\"[A-G][^\"()]*\\([A-G][^\"]*\\)\"");
        Pattern bracketed = Pattern.compile("\"\\([A-G][^\"]*\\)\"");
        long alternates = 0;
        long optional = 0;
        for (String folder : FOLDERS)
            for (Corpus.Numbered file : Corpus.files(folder, ".abc")) {
                String text = PlainAbc.withoutOrder(Files.readString(file.path(), StandardCharsets.UTF_8));
                List<PlacedChord> chords = Abc.read(text).tune().measures().stream()
                        .flatMap(measure -> measure.chords().stream())
                        .toList();

                long here = chords.stream()
                        .filter(chord -> chord.alternate().isPresent())
                        .count();
                assertThat(here)
                        .as(file.toString())
                        .isEqualTo(two.matcher(text).results().count());
                alternates += here;
                optional += chords.stream().filter(PlacedChord::optional).count();
                assertThat(chords.stream().filter(PlacedChord::optional).count())
                        .as(file.toString())
                        .isEqualTo(bracketed.matcher(text).results().count());
            }

        System.out.println("ABC collections: " + alternates + " alternates, " + optional + " chords in brackets");
        if (Corpus.isWhole()) {
            assertThat(alternates).isEqualTo(141);
            assertThat(optional).isEqualTo(8);
        }
    }

    @Test
    void atMostOneInAHundredOfTheOtherSignsIsLeftOut() throws IOException {
        Map<String, Integer> kinds = new TreeMap<>();
        long signs = 0;
        for (String folder : FOLDERS)
            for (Corpus.Numbered file : Corpus.files(folder, ".abc")) {
                signs += PlainAbc.firstTune(Files.readString(file.path(), StandardCharsets.UTF_8))
                        .otherSigns();
                for (Skipped skipped : reader.read(file.path()).skipped())
                    if (isLoss(skipped)) kinds.merge(skipped.what().name(), skipped.count(), Integer::sum);
            }
        int lost = kinds.values().stream().mapToInt(Integer::intValue).sum();

        System.out.println("ABC collections: " + lost + " of " + signs + " signs other than notes left out: " + kinds);
        assertThat(lost * 100L).isLessThanOrEqualTo(signs);
    }

    /** A repeated note of a chord is no loss; its key is pressed. */
    private static boolean isLoss(Skipped skipped) {
        boolean gone = skipped.what().kind() == SkippedWhat.Kind.LEFT_OUT
                || skipped.what() == SkippedWhat.STRAY_SIGN
                || skipped.what() == SkippedWhat.BAD_FIELD;
        return gone && skipped.what() != SkippedWhat.DOUBLED_NOTE;
    }

    @Test
    void agreedTunesArePlayedAsTheirMidiFilesPlayThem() throws IOException, InvalidMidiDataException {
        Path folder = Corpus.folder("abc-nottingham");
        Path midi = Corpus.folder("midi-nottingham");
        TreeSet<String> agreed = new TreeSet<>(Files.readAllLines(folder.resolve("agreed-playorder.txt")));
        int compared = 0;
        for (String name : agreed) {
            if (!Corpus.isWhole() && compared % 10 != 0) {
                compared++;
                continue;
            }
            ReadTune read = reader.read(folder.resolve(name + ".abc"));

            assertThat(PlayedPitches.text(PlayedPitches.of(read.tune())))
                    .as(name)
                    .isEqualTo(PlayedPitches.text(PlayedPitches.of(midi.resolve(name + ".mid"))));
            compared++;
        }
        assertThat(compared).isEqualTo(403);
    }

    /** The second opinion of abcjs 6.7.2; the script that asked it lies beside the tables. */
    @Test
    void pitchesAsPlayedAreThoseOfAbcjsExceptWhereTheTableSaysWhyNot() throws IOException {
        Map<String, String> opinions = new HashMap<>();
        for (String[] row : rows("abcjs-played.tsv")) opinions.put(row[0] + " " + row[1] + " " + row[2], row[4]);
        Map<String, String> reasons = new HashMap<>();
        for (String[] row : rows("abcjs-disagreements.tsv")) reasons.put(row[0] + " " + row[1], row[2]);
        assertThat(opinions).hasSize(850);
        List<String> unlike = new ArrayList<>();
        for (String folder : FOLDERS)
            for (Corpus.Numbered file : Corpus.files(folder, ".abc")) {
                String key = folder + " " + file.index();
                Optional<String> theirs =
                        Optional.ofNullable(opinions.get(key + " " + PlainMusicXml.fingerprint(file.path())));
                assertThat(theirs).as("the table is of this corpus: " + key).isPresent();
                String ours = PlayedPitches.fingerprint(
                        PlayedPitches.of(reader.read(file.path()).tune()));
                if (ours.equals(theirs.get()) == reasons.containsKey(key)) unlike.add(key);
                if (reasons.getOrDefault(key, "").startsWith("order of parts only")
                        && !withoutOrder(file.path()).equals(theirs.get()))
                    unlike.add(key + ": not by the order alone");
            }

        assertThat(unlike).isEmpty();
    }

    private static String withoutOrder(Path file) throws IOException {
        String text = PlainAbc.withoutOrder(Files.readString(file, StandardCharsets.UTF_8));
        return PlayedPitches.fingerprint(PlayedPitches.of(Abc.read(text).tune()));
    }

    private static List<String[]> rows(String table) throws IOException {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(AbcCorpusTest.class.getResourceAsStream(table), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\t"))
                    .toList();
        }
    }
}
