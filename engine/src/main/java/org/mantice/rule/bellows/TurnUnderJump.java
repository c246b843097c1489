package org.mantice.rule.bellows;

import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;

/** A jump of the left hand is worse at a turn of the bellows: the arm that pulls is the arm that aims. */
public final class TurnUnderJump implements Rule<TurnPlace> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.turn-under-jump", RuleSet.BELLOWS_POLICY, "common practice, no source; the numbers are estimates");
    private static final long SMALL = 250;
    private static final long LARGE = 900;

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
        return switch (place.jump()) {
            case NONE -> 0;
            case SMALL -> SMALL;
            case LARGE -> LARGE;
        };
    }

    @Override
    public Reasons explain(TurnPlace place) {
        return switch (place.jump()) {
            case NONE -> Reasons.NOTHING;
            case SMALL -> Reasons.of(SMALL, Fact.of("bellows.turn-under-jump.small"));
            case LARGE -> Reasons.of(LARGE, Fact.of("bellows.turn-under-jump.large"));
        };
    }
}
