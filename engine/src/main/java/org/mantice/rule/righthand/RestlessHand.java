package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.HandMove;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Two changes of place in a row: the hand does not come to rest. Dearer where it goes back at once to where it
 * was. */
final class RestlessHand implements Rule<FingerTriple> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.restless-hand", RuleSet.FINGERING_SPAN, "common practice, no source; price estimate");

    private static final long TWICE = 400;
    private static final long BACK = 300;

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
        if (!changes(step.first()) || !changes(step.second())) return 0;
        boolean back = step.before().handPlace() == step.after().handPlace();
        return (TWICE + (back ? BACK : 0)) * Haste.perMille(step.second().availableMillis()) / 1_000;
    }

    @Override
    public Reasons explain(FingerTriple step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(cost, Fact.of("fingering.restless-hand.fact", KeyWords.of(step.middle())));
    }

    private static boolean changes(FingerPair pair) {
        return pair.from().handPlace() != pair.to().handPlace() && pair.move() != HandMove.REPEATED_NOTE;
    }
}
