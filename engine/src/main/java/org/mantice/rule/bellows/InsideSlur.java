package org.mantice.rule.bellows;

import java.util.Optional;
import org.mantice.rule.Fact;
import org.mantice.rule.GiveWay;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;

/** A turn inside a slur breaks the legato: not while another way is left. */
public final class InsideSlur implements Rule<TurnPlace> {
    private static final RuleInfo INFO = new RuleInfo(
            "bellows.slur", RuleSet.BELLOWS_POLICY, "common practice, no source", Optional.of(GiveWay.TURN_IN_SLUR));

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
        return place.slurred() ? BAN : 0;
    }

    @Override
    public Reasons explain(TurnPlace place) {
        return place.slurred() ? Reasons.of(BAN, Fact.of("bellows.slur.ban")) : Reasons.NOTHING;
    }
}
