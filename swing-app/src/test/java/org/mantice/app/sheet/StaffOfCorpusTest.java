package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/** Paints music that nobody on the team wrote. */
class StaffOfCorpusTest {
    @ParameterizedTest
    @ValueSource(strings = {"mxl-leadsheets-pd", "musicxml-test-suite", "musicxml-misc"})
    void everyTuneIsPaintedWithinItsBounds(String folder) {
        List<Corpus.Numbered> files = Corpus.files(folder, ".xml", ".musicxml", ".mxl");
        int painted = 0;

        for (Corpus.Numbered file : files) {
            SheetContent content;
            try {
                Tune tune = new TuneReader().read(file.path()).tune();
                if (!tune.hasNotes()) continue;
                content = Sheets.bare(tune, new Reading.AsWritten());
            } catch (TuneReadException | org.mantice.performance.TuneException e) {
                continue;
            }
            int lines = GridSpacing.of(content, 120).lines().size();
            for (int line = 0; line < lines; line++)
                assertThat(PaintedLine.of(content, line, 120, 6).hasInkOutside())
                        .as("file %d of %s, line %d", file.index(), folder, line)
                        .isFalse();
            painted++;
        }

        System.out.println(folder + ": " + painted + " of " + files.size() + " painted");
        assertThat(painted * 10).isGreaterThanOrEqualTo(files.size() * 7);
    }
}
