package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Mark;

class TurnsTest extends RuleContract<TurnPlace> {
    private final Turns rule = new Turns();

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
                PlaceSteps.plain(), PlaceSteps.marked(Mark.BREATH), PlaceSteps.rest(300), PlaceSteps.betweenPasses());
    }

    /** Common practice, no source: a turn where a singer breathes interrupts less. */
    @Test
    void turnAtABreathCostsHalf() {
        assertThat(2 * rule.cost(PlaceSteps.marked(Mark.PHRASE))).isEqualTo(rule.cost(PlaceSteps.plain()));
    }
}
