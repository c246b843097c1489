package org.mantice.writing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.ReadTune;
import org.mantice.reading.Skipped;
import org.mantice.reading.SkippedWhat;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/** Writes tunes and reads them again. */
class MusicXmlWriterTest {
    private static final int SEEDS = 400;

    @Test
    void randomTunesAreReadBackAsTheyWere() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Tune tune = RandomTunes.tune(seed);

            byte[] written = MusicXmlWriter.write(tune);

            ReadTune read = read(written);
            assertThat(read.tune()).as("seed " + seed).isEqualTo(tune);
            assertThat(read.skipped())
                    .as("seed " + seed)
                    .allMatch(skipped -> skipped.what() == SkippedWhat.OVERFULL || skipped.what() == SkippedWhat.UNDERFULL);
        }
    }

    @Test
    void randomTunesAreValid() {
        MusicXmlSchema schema = MusicXmlSchema.of("musicxml.xsd");
        for (long seed = 0; seed < SEEDS; seed++) {
            byte[] written = MusicXmlWriter.write(RandomTunes.tune(seed));

            assertThat(schema.complaint(written)).as("seed " + seed).isEmpty();
        }
    }

    static ReadTune read(byte[] bytes) {
        return new TuneReader().read("written.musicxml", bytes, ReadOptions.DEFAULT);
    }
}
