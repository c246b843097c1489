package org.mantice.rule.bellows;

import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;

/** A turn takes its time from the note before; a short note suffers. */
public final class StolenTime implements Rule<TurnPlace> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.stolen-time", RuleSet.BELLOWS_POLICY, "common practice, no source; the numbers are estimates");
    /** A tenth of a note goes unnoticed. */
    private static final long FREE_PER_MILLE = 100;
    /** The whole note stolen costs this. */
    private static final long WHOLE_NOTE = 3_000;

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
        return WHOLE_NOTE * Math.max(0, perMille(place) - FREE_PER_MILLE) / 1_000;
    }

    @Override
    public Reasons explain(TurnPlace place) {
        long cost = cost(place);
        if (cost == 0) return Reasons.NOTHING;
        return Reasons.of(cost, Fact.of("bellows.stolen-time.share", stolen(place), place.beforeMillis()));
    }

    private static long perMille(TurnPlace place) {
        return Math.min(1_000, stolen(place) * 1_000 / Math.max(1, place.beforeMillis()));
    }

    private static long stolen(TurnPlace place) {
        return Math.max(0, place.turnMillis() - place.gapMillis());
    }
}
