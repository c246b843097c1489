package org.mantice.harmony;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/** Proposals beside the chords that the people of two collections wrote. */
class ChordProposalCorpusTest {
    /**
     * The tunes measured on are, of those in sorted order whose number from 0 is divisible by 8, the first 100 with
     * chords. The weights were fitted, and what is weighed was chosen, on tunes of other numbers and other titles.
     */
    @Test
    void on_100_folk_tunes_the_proposal_beats_the_tonic_and_primary_triads_by_10_points() throws IOException {
        Agreement agreement = new Agreement();
        List<Path> files = sorted("abc-nottingham", ".abc");
        int tunes = 0;

        for (int i = 0; i < files.size() && tunes < 100; i += 8) {
            Tune tune = new TuneReader().read(files.get(i)).tune();
            if (!tune.hasChords()) continue;
            agreement.add(tune);
            tunes++;
        }

        assertThat(tunes).isEqualTo(100);
        System.out.println("Folk tunes, " + agreement);
        assertThat(agreement.proposed()).isGreaterThan(agreement.tonicOnly() + 0.10);
        assertThat(agreement.proposed()).isGreaterThan(agreement.primary() + 0.10);
    }

    /** Nothing was fitted on lead sheets: songs and dances in many keys, with more kinds of chord than are proposed. */
    @Test
    void on_lead_sheets_the_proposal_beats_both_baselines() throws IOException {
        Agreement agreement = new Agreement();

        for (Path file : sorted("mxl-leadsheets-pd", ".mxl")) {
            try {
                Tune tune = new TuneReader().read(file).tune();
                if (tune.hasChords() && tune.hasNotes()) agreement.add(tune);
            } catch (TuneReadException e) {
                assertThat(e.getMessage()).isNotBlank();
            }
        }

        System.out.println("Lead sheets, " + agreement);
        assertThat(agreement.proposed()).isGreaterThan(agreement.tonicOnly());
        assertThat(agreement.proposed()).isGreaterThan(agreement.primary());
    }

    private static List<Path> sorted(String folder, String ending) throws IOException {
        try (Stream<Path> list = Files.list(Corpus.folder(folder))) {
            return list.filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }
}
