package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerSpans;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A finger that plays off its resting key: the hand opens or turns. Small hands pay more. */
final class ReachFromPlace implements Rule<FingerMoment> {
    private static final RuleInfo INFO = RuleInfo.of("fingering.reach", RuleSet.FINGERING_SPAN, "estimate");

    /** Millipoints per white key off, by finger, for a hand of the published span. */
    private static final long[] PER_KEY = {0, 200, 250, 250, 250, 200};

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
        long sum = 0;
        for (int note = 0; note < step.keys().size(); note++) {
            int finger = step.fingers().get(note);
            // Half a key is no reach: black keys lie between.
            int halves = Math.abs(HandPlaces.halfKeysOff(step.keys().get(note), finger, step.handPlace()));
            if (halves > 1) sum += PER_KEY[finger] * halves / 2;
        }
        sum = sum * Haste.perMille(step.durationMillis()) / 1_000;
        return sum * (FingerSpans.PUBLISHED_HAND_TENTHS - 10) / (step.handSpanTenths() - 10);
    }

    @Override
    public Reasons explain(FingerMoment step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(cost, Fact.of("fingering.reach.fact", KeyWords.of(step), step.fingers()));
    }
}
