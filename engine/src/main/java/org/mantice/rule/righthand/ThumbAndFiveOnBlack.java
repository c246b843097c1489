package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Thumb or little finger, the short ones, on a black key: the hand must move into the keys, and out again for a
 * white key before or after. */
final class ThumbAndFiveOnBlack implements Rule<FingerPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.short-finger-on-black",
            RuleSet.FINGERING_SPAN,
            "Parncutt et al. 1997, rules 10 and 11; prices estimate");

    /** At each end of a pair, so twice for a note between others. */
    private static final long THUMB = 250;

    private static final long THUMB_BESIDE_WHITE = 450;
    private static final long LITTLE_FINGER_BESIDE_WHITE = 150;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerPair> reach() {
        return FingerPair.class;
    }

    @Override
    public long cost(FingerPair step) {
        long cost = onBlack(step.from(), step.to()) + onBlack(step.to(), step.from());
        return cost * Haste.perMille(step.availableMillis()) / 1_000;
    }

    @Override
    public Reasons explain(FingerPair step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                "fingering.short-finger-on-black.fact",
                                KeyWords.of(step.from()),
                                KeyWords.of(step.to())));
    }

    private static long onBlack(FingerMoment moment, FingerMoment beside) {
        boolean thumb = isOnBlack(moment, 1);
        boolean fifth = isOnBlack(moment, 5);
        if (!thumb && !fifth) return 0;
        boolean white = hasWhite(beside);
        long cost = 0;
        if (thumb) cost += white ? THUMB + THUMB_BESIDE_WHITE : THUMB;
        if (fifth && white) cost += LITTLE_FINGER_BESIDE_WHITE;
        return cost;
    }

    private static boolean hasWhite(FingerMoment moment) {
        for (int key : moment.keys()) if (!HandPlaces.isBlack(key)) return true;
        return false;
    }

    private static boolean isOnBlack(FingerMoment moment, int finger) {
        int key = moment.keyUnder(finger);
        return key >= 0 && HandPlaces.isBlack(key);
    }
}
