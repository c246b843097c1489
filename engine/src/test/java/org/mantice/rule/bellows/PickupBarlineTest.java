package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Pickup;

class PickupBarlineTest extends RuleContract<TurnPlace> {
    private final PickupBarline rule = new PickupBarline();

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
        return List.of(PlaceSteps.pickup(Pickup.AFTER), PlaceSteps.pickup(Pickup.BEFORE), PlaceSteps.plain());
    }

    /** Common practice, no source. */
    @Test
    void onlyTheBarlineAfterThePickupCosts() {
        assertThat(rule.cost(PlaceSteps.pickup(Pickup.AFTER))).isPositive();
        assertThat(rule.cost(PlaceSteps.pickup(Pickup.BEFORE))).isZero();
    }
}
