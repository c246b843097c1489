package org.mantice.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.examples.ExampleFiles;
import org.mantice.examples.MusicXmlSchema;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.PlayedNote;
import org.mantice.performance.SettingsBuilder;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/** Writes tunes that others made and reads them again; also as files whose writer is not known. */
class WritingCorpusTest {
    private static final String[] ENDINGS = {".xml", ".musicxml", ".mxl"};

    private final TuneReader reader = new TuneReader();

    @Test
    void examplesComeBackAsTheyWere() throws Exception {
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            check(files.sorted().toList(), "examples");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"musicxml-test-suite", "mxl-leadsheets-pd", "musicxml-misc"})
    void readableFilesComeBackAsTheyWere(String folder) throws Exception {
        check(Corpus.files(folder, ENDINGS).stream().map(Corpus.Numbered::path).toList(), folder);
    }

    /** Where the writer is not known, a word that ABC keeps as a word may be read as a sign: not checked here. */
    @ParameterizedTest
    @ValueSource(strings = {"abc-nottingham", "abc-flyingcat"})
    void tunesInAbcComeBackAsTheyWere(String folder) throws Exception {
        List<Path> files =
                Corpus.files(folder, ".abc").stream().map(Corpus.Numbered::path).toList();
        check(files, folder, false);
    }

    private void check(List<Path> files, String name) throws Exception {
        check(files, name, true);
    }

    private void check(List<Path> files, String name, boolean alsoWithoutOurName) throws Exception {
        MusicXmlSchema schema = MusicXmlSchema.find().orElse(null);
        List<String> different = new ArrayList<>();
        int written = 0;
        for (Path file : files) {
            Tune tune;
            try {
                tune = reader.read(file).tune();
            } catch (TuneReadException e) {
                continue; // refused files are judged by the tests of reading
            }
            byte[] bytes = MusicXmlWriter.write(tune);
            written++;
            assertThat(Written.read(bytes).tune()).as(file.toString()).isEqualTo(tune);
            assertThat(MusicXmlWriter.write(Written.read(bytes).tune()))
                    .as(file.toString())
                    .isEqualTo(bytes);
            if (schema != null)
                assertThat(Written.problems(schema, bytes)).as(file.toString()).isEmpty();
            if (alsoWithoutOurName && !Written.readWithoutOurName(bytes).tune().equals(tune))
                different.add(file.toString());
            assertUnrolled(file, tune);
        }
        System.out.println(name + ": " + written + " of " + files.size() + " written and read back");
        assertThat(different).as("not the same where the writer is not known").isEmpty();
        assertThat(written).isPositive();
    }

    private static void assertUnrolled(Path file, Tune tune) {
        Performance played =
                Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(2).build());
        Tune unrolled = MusicXmlWriter.unrolled(played, Marking.NONE);
        Performance again = Performer.perform(
                Written.read(MusicXmlWriter.write(unrolled)).tune(),
                SettingsBuilder.of(unrolled).timesThrough(1).build());

        assertThat(struck(again)).as(file.toString()).isEqualTo(struck(played));
        assertThat(chords(again)).as(file.toString()).isEqualTo(chords(played));
        assertThat(bass(again)).as(file.toString()).isEqualTo(bass(played));
        assertThat(again.endMicros()).as(file.toString()).isEqualTo(played.endMicros());
    }

    private static List<String> struck(Performance played) {
        return played.treble().stream()
                .map(moment -> moment.onset() + " " + moment.onsetMicros() + " " + moment.duration() + " "
                        + moment.startsPhrase() + " "
                        + moment.notes().stream().map(PlayedNote::midi).toList())
                .toList();
    }

    private static List<String> chords(Performance played) {
        return played.harmony().stream()
                .map(span -> span.start() + " " + span.end() + " " + span.chord())
                .toList();
    }

    private static List<String> bass(Performance played) {
        return played.bass().stream()
                .map(moment -> moment.onset() + " " + moment.duration() + " " + moment.pitches() + moment.chord())
                .toList();
    }
}
