package org.mantice.rule.bellows;

import java.util.Optional;
import org.mantice.rule.Fact;
import org.mantice.rule.GiveWay;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;

/** A turn under a chord that the left hand holds is heard as a second chord: not while another way is left. */
public final class UnderHeldChord implements Rule<TurnPlace> {
    private static final RuleInfo INFO = new RuleInfo(
            "bellows.held-chord",
            RuleSet.BELLOWS_POLICY,
            "common practice, no source",
            Optional.of(GiveWay.TURN_UNDER_SUSTAINED_CHORD));

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
        return place.heldChord() ? BAN : 0;
    }

    @Override
    public Reasons explain(TurnPlace place) {
        return place.heldChord() ? Reasons.of(BAN, Fact.of("bellows.held-chord.ban")) : Reasons.NOTHING;
    }
}
