package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Third, fourth and fifth finger in a row, in any order: the fourth hangs between the other two. */
final class ThreeFourFive implements Rule<FingerTriple> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.three-four-five", RuleSet.FINGERING_SPAN, "Parncutt et al. 1997, rule 7; price estimate");

    private static final long IN_A_ROW = 50;
    private static final int ALL_THREE = 1 << 3 | 1 << 4 | 1 << 5;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerTriple> reach() {
        return FingerTriple.class;
    }

    @Override
    public long cost(FingerTriple step) {
        int fingers = 1 << step.before().highestFinger()
                | 1 << step.middle().highestFinger()
                | 1 << step.after().highestFinger();
        return fingers == ALL_THREE ? IN_A_ROW * Haste.perMille(step.second().availableMillis()) / 1_000 : 0;
    }

    @Override
    public Reasons explain(FingerTriple step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                "fingering.three-four-five.fact",
                                step.before().highestFinger(),
                                step.middle().highestFinger(),
                                step.after().highestFinger()));
    }
}
