package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Jump;

class TurnUnderJumpTest extends RuleContract<TurnPlace> {
    private final TurnUnderJump rule = new TurnUnderJump();

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
        return List.of(PlaceSteps.jump(Jump.NONE), PlaceSteps.jump(Jump.SMALL), PlaceSteps.jump(Jump.LARGE));
    }

    /** Common practice, no source. */
    @Test
    void largerJumpCostsMore() {
        assertThat(rule.cost(PlaceSteps.jump(Jump.LARGE))).isGreaterThan(rule.cost(PlaceSteps.jump(Jump.SMALL)));
    }
}
