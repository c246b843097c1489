package org.mantice.rule.bellows;

import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;

/** With a pickup the bellows turn before it, not at the barline that follows. */
public final class PickupBarline implements Rule<TurnPlace> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.pickup", RuleSet.BELLOWS_POLICY, "common practice, no source; the number is an estimate");
    private static final long AT_ITS_BARLINE = 1_500;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<TurnPlace> reach() {
        return TurnPlace.class;
    }

    @Override
    public long cost(TurnPlace place) {
        return place.pickup() == TurnPlace.Pickup.AFTER ? AT_ITS_BARLINE : 0;
    }

    @Override
    public Reasons explain(TurnPlace place) {
        return cost(place) == 0 ? Reasons.NOTHING : Reasons.of(AT_ITS_BARLINE, Fact.of("bellows.pickup.barline"));
    }
}
