package org.mantice.plugins.firstyear;

import java.util.Locale;
import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A pupil's hand changes its place in a silence, not while the tune sounds on. */
public final class MoveInGap implements Rule<FingerPair> {
    private static final RuleInfo INFO =
            RuleInfo.of("first-year.move-in-gap", RuleSet.FINGERING_SPAN, "common practice, no source; size estimate");
    private static final long COST = 700;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerPair> reach() {
        return FingerPair.class;
    }

    @Override
    public long cost(FingerPair pair) {
        return pair.gapMillis() == 0 && pair.move() != HandMove.STAY ? COST : 0;
    }

    @Override
    public Reasons explain(FingerPair pair) {
        if (cost(pair) == 0) return Reasons.NOTHING;
        String move = pair.move().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Reasons.of(COST, Fact.of("first-year.move-in-gap.fact." + move));
    }
}
