package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TurnPlace;

class UnderHeldChordTest extends RuleContract<TurnPlace> {
    private final UnderHeldChord rule = new UnderHeldChord();

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
        return List.of(PlaceSteps.underHeldChord(), PlaceSteps.plain());
    }

    /** Common practice, no source. */
    @Test
    void heldChordForbidsTheTurn() {
        assertThat(rule.cost(PlaceSteps.underHeldChord())).isEqualTo(Rule.BAN);
    }
}
