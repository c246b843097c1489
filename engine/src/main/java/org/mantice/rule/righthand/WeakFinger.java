package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The fourth and fifth fingers are weaker, the more so in fast notes. */
final class WeakFinger implements Rule<FingerMoment> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.weak-finger", RuleSet.FINGERING_SPAN, "Parncutt et al. 1997, rule 6; prices estimate");

    private static final long FOURTH = 60;
    private static final long FIFTH = 40;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerMoment> reach() {
        return FingerMoment.class;
    }

    @Override
    public long cost(FingerMoment step) {
        long fingers = (struck(step, 4) ? FOURTH : 0) + (struck(step, 5) ? FIFTH : 0);
        return fingers * Haste.perMille(step.durationMillis()) / 1_000;
    }

    @Override
    public Reasons explain(FingerMoment step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(cost, Fact.of("fingering.weak-finger.fact", KeyWords.of(step), step.fingers()));
    }

    private static boolean struck(FingerMoment step, int finger) {
        int note = step.fingers().indexOf(finger);
        return note >= 0 && !step.held().get(note);
    }
}
