package org.mantice.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.editing.Edits;
import org.mantice.editing.RandomEdits;
import org.mantice.examples.ExampleFiles;
import org.mantice.examples.MusicXmlSchema;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/** A tune written after edits and read back is the edited tune, in a file that the schema allows. */
class EditedTunesAreWrittenTest {
    private static final int EDITS = 25;

    @Test
    void examples_come_back_as_they_were_edited() throws Exception {
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            for (Path file : files.sorted().toList())
                for (long seed = 0; seed < 10; seed++)
                    comesBack(new TuneReader().read(file).tune(), seed, file.toString());
        }
    }

    @Test
    void tunes_that_use_every_part_of_the_model_come_back_as_they_were_edited() {
        for (long seed = 0; seed < 150; seed++) comesBack(RandomTunes.tune(seed), seed, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"abc-nottingham", "mxl-leadsheets-pd"})
    void tunes_of_others_come_back_as_they_were_edited(String folder) {
        List<Corpus.Numbered> files = Corpus.files(folder, ".abc", ".mxl", ".musicxml", ".xml");
        for (Corpus.Numbered file : files)
            comesBack(new TuneReader().read(file.path()).tune(), file.index(), folder + " " + file.index());
        assertThat(files).isNotEmpty();
    }

    @Test
    void edited_examples_are_valid() throws Exception {
        MusicXmlSchema schema = Written.schema();
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            for (Path file : files.sorted().toList()) {
                Tune tune = new TuneReader().read(file).tune();
                Tune edited = Edits.apply(tune, RandomEdits.of(tune, EDITS, 3)).tune();
                assertThat(Written.problems(schema, MusicXmlWriter.write(edited)))
                        .as(file.toString())
                        .isEmpty();
            }
        }
    }

    private static void comesBack(Tune tune, long seed, String name) {
        Tune edited = Edits.apply(tune, RandomEdits.of(tune, EDITS, seed)).tune();

        assertThat(Written.read(MusicXmlWriter.write(edited)).tune()).as(name).isEqualTo(edited);
    }
}
