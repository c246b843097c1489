package org.mantice.writing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.mantice.examples.MusicXmlSchema;
import org.mantice.reading.ReadTune;
import org.mantice.reading.SkippedWhat;
import org.mantice.tune.Tune;

/** Whatever a tune may hold comes back, in a file that the schema allows. */
class RandomTunesAreWrittenTest {
    private static final int SEEDS = 400;

    @Test
    void theyAreReadBackAsTheyWere() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Tune tune = RandomTunes.tune(seed);

            ReadTune read = Written.read(MusicXmlWriter.write(tune));

            assertThat(read.tune()).as("seed " + seed).isEqualTo(tune);
            assertThat(read.skipped())
                    .as("seed " + seed)
                    .allMatch(each -> each.what() == SkippedWhat.OVERFULL || each.what() == SkippedWhat.UNDERFULL);
        }
    }

    @Test
    void theyAreValid() throws Exception {
        MusicXmlSchema schema = Written.schema();
        for (long seed = 0; seed < SEEDS; seed++)
            assertThat(Written.problems(schema, MusicXmlWriter.write(RandomTunes.tune(seed))))
                    .as("seed " + seed)
                    .isEmpty();
    }
}
