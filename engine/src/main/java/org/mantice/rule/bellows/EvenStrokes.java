package org.mantice.rule.bellows;

import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.StrokePair;

/**
 * Consecutive strokes are even, counted in beats; half of a phrase beside a whole one is the next best; the first and the
 * last stroke are free.
 */
public final class EvenStrokes implements Rule<StrokePair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.evenness", RuleSet.BELLOWS_POLICY, "common practice, no source; the numbers are estimates");
    private static final long HALF_BESIDE_WHOLE = 300;
    private static final long UNEVEN = 200;
    /** What is added for each part that the shorter stroke lacks of the longer: all of it costs this. */
    private static final long WHOLE_DIFFERENCE = 800;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<StrokePair> reach() {
        return StrokePair.class;
    }

    @Override
    public long cost(StrokePair pair) {
        int first = pair.first().halfBeats();
        int second = pair.second().halfBeats();
        if (first == second || pair.first().free() || pair.second().free()) return 0;
        if (Math.max(first, second) == 2 * Math.min(first, second)) return HALF_BESIDE_WHOLE;
        return UNEVEN + WHOLE_DIFFERENCE * Math.abs(first - second) / Math.max(first, second);
    }

    @Override
    public Reasons explain(StrokePair pair) {
        long cost = cost(pair);
        if (cost == 0) return Reasons.NOTHING;
        return Reasons.of(
                cost,
                Fact.of(
                        "bellows.evenness.differ",
                        pair.first().beats(),
                        pair.second().beats()));
    }
}
