package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.plan.LeftHandPlan;
import org.mantice.player.BassMethod;
import org.mantice.player.Taste;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReader;

/** Lead sheets of the corpus on a beginner's, a student's and a full bass. */
class LeadSheetsTest {
    @Test
    void leadSheetsArePlannedAndExplainedOnThreeInstruments() {
        int planned = 0;
        for (Corpus.Numbered file : Corpus.files("mxl-leadsheets-pd", ".mxl")) {
            Performance performance =
                    Performer.perform(new TuneReader().read(file.path()).tune());
            for (int buttons : List.of(12, 48, 120)) {
                LeftHandLayer layer = LeftHands.layer(performance, buttons, BassMethod.FOUR_THREE_TWO, LeftHands.RULES);
                LeftHandPlan plan = LeftHands.best(layer);

                assertThat(plan.events().isEmpty())
                        .as("file %s on %s: %s", file.index(), buttons, layer.remarks())
                        .isEqualTo(!performance.tune().hasChords()
                                && performance.bass().isEmpty());
                assertThat(layer.explain(plan, Taste.PLAIN).cost()).isEqualTo(plan.cost(Taste.PLAIN));
                assertThat(layer.rescore(plan)).isEqualTo(plan);
                planned++;
            }
        }
        assertThat(planned).isPositive();
    }
}
