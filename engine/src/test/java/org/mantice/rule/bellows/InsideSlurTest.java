package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TurnPlace;

class InsideSlurTest extends RuleContract<TurnPlace> {
    private final InsideSlur rule = new InsideSlur();

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
        return List.of(PlaceSteps.slurred(), PlaceSteps.plain());
    }

    /** Magnante's method, as excerpted: do not change inside a legato passage or run. */
    @Test
    void slurForbidsTheTurn() {
        assertThat(rule.cost(PlaceSteps.slurred())).isEqualTo(Rule.BAN);
    }
}
