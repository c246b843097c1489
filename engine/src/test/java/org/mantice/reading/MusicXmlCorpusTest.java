package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.tune.ChordKind;
import org.mantice.tune.Measure;

/** Reads files that nobody on the team wrote. */
class MusicXmlCorpusTest {
    private static final String[] ENDINGS = {".xml", ".musicxml", ".mxl"};

    private final TuneReader reader = new TuneReader();

    @Test
    void atLeast140OfThe166FilesOfTheTestSuiteYieldATune() throws IOException {
        List<Corpus.Numbered> files = Corpus.files("musicxml-test-suite", ENDINGS);
        int read = readAll("musicxml-test-suite", files);

        System.out.println("musicxml-test-suite: " + read + " of " + files.size() + " read");
        if (Corpus.isWhole()) assertThat(files).hasSize(166);
        assertThat(read * 166).isGreaterThanOrEqualTo(140 * files.size() - (Corpus.isWhole() ? 0 : 166));
    }

    @Test
    void allLeadSheetsAreReadWithTheirChordSymbols() throws IOException {
        List<Corpus.Numbered> files = Corpus.files("mxl-leadsheets-pd", ENDINGS);
        int read = readAll("mxl-leadsheets-pd", files);

        System.out.println("mxl-leadsheets-pd: " + read + " of " + files.size() + " read");
        assertThat(read).isEqualTo(files.size());
        for (Corpus.Numbered file : files)
            assertThat(reader.read(file.path()).tune().hasChords()).isTrue();
    }

    @Test
    void allMiscellaneousFilesWithNotesAreRead() throws IOException {
        List<Corpus.Numbered> files = Corpus.files("musicxml-misc", ENDINGS);

        System.out.println("musicxml-misc: " + readAll("musicxml-misc", files) + " of " + files.size() + " read");
    }

    /** Number of files read; each refusal must be for want of notes or stand in the table. */
    private int readAll(String folder, List<Corpus.Numbered> files) throws IOException {
        Set<String> table = refusals();
        int read = 0;
        for (Corpus.Numbered file : files) {
            try {
                ReadTune tune = reader.read(file.path());
                assertThat(tune.tune().hasNotes()).as(file.toString()).isTrue();
                assertSound(tune);
                read++;
            } catch (TuneReadException e) {
                if (e.reason() == Reason.NO_NOTES)
                    assertThat(PlainMusicXml.of(file.path()).pitchedNotes())
                            .as(e.getMessage())
                            .isZero();
                else {
                    String fingerprint = PlainMusicXml.fingerprint(file.path());
                    assertThat(table)
                            .as(e.getMessage())
                            .contains(folder + "\t" + file.index() + "\t" + fingerprint + "\t" + e.reason());
                }
            }
        }
        return read;
    }

    private static Set<String> refusals() throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                MusicXmlCorpusTest.class.getResourceAsStream("refusals.tsv"), StandardCharsets.UTF_8))) {
            return lines.lines().filter(line -> !line.startsWith("#")).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** Every chord and mark lies in its measure. */
    private static void assertSound(ReadTune tune) {
        for (Measure measure : tune.tune().measures()) {
            assertThat(measure.chords()).allMatch(chord -> chord.offset().isBefore(measure.length()));
            assertThat(measure.marks()).noneMatch(mark -> measure.length().isBefore(mark.offset()));
        }
    }

    /** The count goes through another parser and none of our classes. */
    @Test
    void everyNoteOfALeadSheetIsInTheTuneOrListedAsLeftOut() throws IOException {
        for (Corpus.Numbered file : Corpus.files("mxl-leadsheets-pd", ENDINGS)) {
            ReadTune read = reader.read(file.path());
            PlainMusicXml plain = PlainMusicXml.of(file.path());

            assertThat(heldPitches(read) + leftOut(read)).as(file.toString()).isEqualTo(plain.pitchedNotes());
            assertThat(heldEvents(read) + leftOut(read)).as(file.toString()).isGreaterThanOrEqualTo(plain.mainNotes());
        }
    }

    @Test
    void everyNoteOfTheTestSuiteIsInTheTuneOrListedAsLeftOut() throws IOException {
        List<String> different = new ArrayList<>();
        for (Corpus.Numbered file : Corpus.files("musicxml-test-suite", ENDINGS)) {
            PlainMusicXml plain = PlainMusicXml.of(file.path());
            if (plain.pitchedNotes() == 0) continue;
            ReadTune read = reader.read(file.path());
            long held = heldPitches(read) + leftOut(read);
            if (held != plain.pitchedNotes()) different.add(file + ": " + held + " of " + plain.pitchedNotes());
        }
        assertThat(different).isEmpty();
    }

    /** Melody with grace notes and written-out bass. */
    private static long heldPitches(ReadTune read) {
        return read.tune().measures().stream()
                .mapToLong(measure -> measure.melody().stream()
                                .mapToLong(event -> event.notes().size()
                                        + event.graces().notes().stream()
                                                .mapToLong(List::size)
                                                .sum()
                                        + event.after().notes().stream()
                                                .mapToLong(List::size)
                                                .sum())
                                .sum()
                        + measure.bass().stream()
                                .mapToLong(event -> event.pitches().size())
                                .sum())
                .sum();
    }

    private static long heldEvents(ReadTune read) {
        return read.tune().measures().stream()
                .mapToLong(measure -> measure.melody().stream()
                                .filter(event -> !event.isRest())
                                .count()
                        + measure.bass().size())
                .sum();
    }

    private static long leftOut(ReadTune read) {
        Set<SkippedWhat> notes = Set.of(
                SkippedWhat.OTHER_PART_NOTES,
                SkippedWhat.OTHER_VOICE_NOTES,
                SkippedWhat.CUE_NOTES,
                SkippedWhat.DOUBLED_NOTE,
                SkippedWhat.UNREADABLE_PITCH,
                SkippedWhat.NOTE_WITHOUT_LENGTH,
                SkippedWhat.LOST_GRACE);
        return read.skipped().stream()
                .filter(skipped -> notes.contains(skipped.what()))
                .mapToLong(Skipped::count)
                .sum();
    }

    /** O36: read from the schema itself. */
    @Test
    void theChordKindsAreThe33OfTheSchema() throws IOException {
        List<Corpus.Numbered> found = Corpus.files("musicxml-4.0-schema", "musicxml.xsd");
        String xsd = Files.readString(found.get(0).path());
        String type = xsd.substring(xsd.indexOf("<xs:simpleType name=\"kind-value\">"));
        type = type.substring(0, type.indexOf("</xs:simpleType>"));
        Set<String> values = new TreeSet<>();
        for (String piece : type.split("<xs:enumeration value=\"")) values.add(piece.substring(0, piece.indexOf('"')));
        values.removeIf(value -> value.startsWith("<") || value.contains("xs:"));

        Set<String> ours = new TreeSet<>();
        for (ChordKind kind : ChordKind.values()) ours.add(kind.musicXml());
        assertThat(ours).hasSize(33);
        assertThat(values.stream().filter(value -> !value.equals("kind-value")).collect(Collectors.toSet()))
                .isEqualTo(ours);
    }

    @Test
    void aMissingFileIsNamed() {
        assertThatThrownBy(() -> reader.read(Path.of("no-such-folder", "waltz.mxl")))
                .isInstanceOf(TuneReadException.class)
                .hasMessageContaining("waltz.mxl: no such file");
    }
}
