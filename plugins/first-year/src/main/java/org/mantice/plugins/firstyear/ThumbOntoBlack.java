package org.mantice.plugins.firstyear;

import org.mantice.instrument.TrebleKeyboard;
import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The thumb learns to pass under onto white keys first. */
public final class ThumbOntoBlack implements Rule<FingerPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "first-year.thumb-onto-black", RuleSet.FINGERING_SPAN, "common practice, no source; size estimate");
    private static final long COST = 3 * UNIT;

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
        return pair.move() == HandMove.THUMB_UNDER
                        && TrebleKeyboard.isBlack(pair.to().lowestKey())
                ? COST
                : 0;
    }

    @Override
    public Reasons explain(FingerPair pair) {
        if (cost(pair) == 0) return Reasons.NOTHING;
        return Reasons.of(
                COST, Fact.of("first-year.thumb-onto-black.fact", pair.from().highestFinger()));
    }
}
