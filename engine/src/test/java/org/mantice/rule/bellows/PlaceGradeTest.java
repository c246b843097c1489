package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Mark;
import org.mantice.rule.TurnPlace.Pickup;

class PlaceGradeTest extends RuleContract<TurnPlace> {
    private final PlaceGrade rule = new PlaceGrade();

    @Override
    protected RuleProvider provider() {
        return new BellowsRules();
    }

    @Override
    protected Rule<TurnPlace> rule() {
        return rule;
    }

    @Override
    protected List<TurnPlace> steps() {
        return List.of(
                PlaceSteps.plain(),
                PlaceSteps.marked(Mark.PHRASE),
                PlaceSteps.marked(Mark.STOP),
                PlaceSteps.marked(Mark.COMMA),
                PlaceSteps.rest(400),
                PlaceSteps.separate(),
                PlaceSteps.after(1_000, 250),
                PlaceSteps.after(200, 200),
                PlaceSteps.pickup(Pickup.AFTER),
                PlaceSteps.atBarline(1),
                PlaceSteps.atBarline(2),
                PlaceSteps.atBarline(4),
                PlaceSteps.atBarline(8));
    }

    /** Common practice, no source. */
    @Test
    void breathIsBetterThanARestThanABarlineThanInsideTheMeasureThanARun() {
        assertThat(List.of(
                        rule.cost(PlaceSteps.marked(Mark.BREATH)),
                        rule.cost(PlaceSteps.rest(400)),
                        rule.cost(PlaceSteps.atBarline(4)),
                        rule.cost(PlaceSteps.atBarline(1)),
                        rule.cost(PlaceSteps.plain()),
                        rule.cost(PlaceSteps.after(200, 200))))
                .isSorted()
                .doesNotHaveDuplicates();
    }

    /** Common practice, no source. */
    @Test
    void moreCompleteMeasuresOfTheSectionAreBetter() {
        assertThat(List.of(
                        rule.cost(PlaceSteps.atBarline(16)),
                        rule.cost(PlaceSteps.atBarline(12)),
                        rule.cost(PlaceSteps.atBarline(6)),
                        rule.cost(PlaceSteps.atBarline(3))))
                .isSorted()
                .doesNotHaveDuplicates();
    }

    /** Common practice, no source: one breathes where the words end a sentence, less so after a comma. */
    @Test
    void wordsThatEndMakeAPlaceGood() {
        assertThat(List.of(
                        rule.cost(PlaceSteps.marked(Mark.BREATH)),
                        rule.cost(PlaceSteps.marked(Mark.STOP)),
                        rule.cost(PlaceSteps.marked(Mark.COMMA)),
                        rule.cost(PlaceSteps.plain())))
                .isSorted()
                .doesNotHaveDuplicates();
    }
}
