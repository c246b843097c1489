package org.mantice.layer.righthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReader;
import org.mantice.search.SecondOpinion;
import org.mantice.tune.Tune;

/** Optimum and order of fingerings of lead sheets against a general-purpose graph library. */
class RightHandSecondOpinionIT {
    private static final int TUNES = 3;

    @Test
    void fingeringsOfLeadSheetsAreThoseOfTheGraphLibrary() {
        RuleBook book = RuleBook.of(Packs.ofClassPath().providers());
        int compared = 0;
        for (Corpus.Numbered file : Corpus.files("mxl-leadsheets-pd", ".mxl")) {
            if (compared == TUNES) break;
            Tune tune = new TuneReader().read(file.path()).tune();
            Performance performance = Performer.perform(
                    tune, SettingsBuilder.of(tune).timesThrough(1).build());
            VariationPlan asWritten = new VariationPlan(
                    performance.passes().stream()
                            .map(pass -> new VariationPlan.PassDecision(pass.number(), "any", 0))
                            .toList(),
                    new TreeMap<>(),
                    List.of());
            HandLattice lattice = new HandLattice(new HandMusic(performance, asWritten), 95, book);
            System.out.println("right hand of lead sheet " + file.index() + ": "
                    + SecondOpinion.on(lattice.graph(Taste.PLAIN), 10, 25));
            compared++;
        }
        assertThat(compared).isEqualTo(TUNES);
    }
}
