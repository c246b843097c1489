package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.mantice.instrument.AccordionPresets;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReader;
import org.mantice.search.SecondOpinion;
import org.mantice.tune.Tune;

/** Optimum and order of button plans of lead sheets against a general-purpose graph library. */
class LeftHandSecondOpinionIT {
    private static final int TUNES = 3;

    @Test
    void buttonsOfLeadSheetsAreThoseOfTheGraphLibrary() {
        RuleBook book = RuleBook.of(Packs.ofClassPath().providers());
        int compared = 0;
        for (Corpus.Numbered file : Corpus.files("mxl-leadsheets-pd", ".mxl")) {
            if (compared == TUNES) break;
            Tune tune = new TuneReader().read(file.path()).tune();
            Performance performance = Performer.perform(
                    tune, SettingsBuilder.of(tune).timesThrough(1).build());
            LeftHandScore score = LeftHandScore.of(
                    performance,
                    AccordionPresets.get("standard-34-key-72-bass"),
                    PlayerPresets.get("medium-hand"),
                    book);
            System.out.println("left hand of lead sheet " + file.index() + ": "
                    + SecondOpinion.on(WeightedLattice.of(score.stages, score.tables, Taste.PLAIN), 10, 25));
            compared++;
        }
        assertThat(compared).isEqualTo(TUNES);
    }
}
