package org.mantice.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.Offer;
import org.mantice.app.model.States;
import org.mantice.rule.Leaning;
import org.mantice.rule.RuleProvider;

class PlanWordsTest {
    private static final List<RuleProvider> PACKS = States.packs().providers();
    private static final PlanWords ENGLISH = new PlanWords(Words.of(Locale.ENGLISH), PACKS);
    private static final PlanWords GERMAN = new PlanWords(Words.of(Locale.GERMAN), PACKS);

    @Test
    void everyLabelThatTheEngineGivesIsSaidInGerman() {
        for (String label : List.of(
                "best",
                "best that can be played",
                "best layer by layer",
                "other turns",
                "other fingers",
                "other buttons",
                "other registers"))
            assertThat(GERMAN.label(label)).as(label).isNotEqualTo(label).doesNotContain("other", "layer");
    }

    @Test
    void labelsOfRealPlansAreKnown() {
        for (String tune : States.TUNES)
            for (Offer offer : States.of(tune).offers())
                assertThat(GERMAN.label(offer.plan().label()))
                        .as(tune + " " + offer.letter())
                        .isNotEqualTo(offer.plan().label());
    }

    @Test
    void leaningsAreCalledByTheirTitles() {
        assertThat(ENGLISH.label("few-turns")).isEqualTo("Few turns, long strokes");
        for (RuleProvider pack : PACKS)
            for (Leaning leaning : pack.leanings())
                assertThat(ENGLISH.label(leaning.id())).isNotEqualTo(leaning.id());
    }

    @Test
    void aPlanThatMovedBackSaysSo() {
        assertThat(ENGLISH.label("best that can be played layer by layer"))
                .isEqualTo("best that can be played, layer by layer");
    }

    @Test
    void anUnknownLabelStaysAsItIs() {
        assertThat(GERMAN.label("my own")).isEqualTo("my own");
    }

    @Test
    void thePlacesAmongThePlansComparedHaveShapesOfTheirOwn() {
        assertThat(List.of(PlanWords.shape(0), PlanWords.shape(1), PlanWords.shape(2), PlanWords.shape(3)))
                .doesNotContain("")
                .doesNotHaveDuplicates();
        assertThat(PlanWords.mark("C", 1)).isEqualTo("C ◆");
        assertThat(PlanWords.mark("E", -1)).isEqualTo("E");
    }
}
