package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The thumb passes under a finger or a finger over the thumb: dearer with distance, with the fourth finger, and
 * where the thumb would be on a black key beside a white one. */
final class ThumbPassing implements Rule<FingerPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.thumb-passing",
            RuleSet.FINGERING_SPAN,
            "Parncutt et al. 1997, rule 12, for the levels; distances estimate, from handbook arpeggios");

    private static final long PASS = 200;

    /** Under a finger on a black key the thumb has room. */
    private static final long PASS_UNDER_BLACK = 100;

    private static final long PER_SEMITONE = 140;

    /** The fourth finger reaches less far, and less with every semitone. */
    private static final long FOURTH_PER_SEMITONE = 120;

    private static final long SECOND_FINGER = 100;
    private static final long UP_TO_BLACK = 400;

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
        if (step.move() != HandMove.THUMB_UNDER && step.move() != HandMove.FINGER_OVER) return 0;
        return step.voices().stream()
                .filter(FingerPair.Voice::crossesThumb)
                .mapToLong(ThumbPassing::pass)
                .min()
                .orElse(0);
    }

    @Override
    public Reasons explain(FingerPair step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                "fingering.thumb-passing.fact",
                                step.melody().higherFinger(),
                                HandPlaces.name(step.melody().fromKey()),
                                HandPlaces.name(step.melody().toKey())));
    }

    private static long pass(FingerPair.Voice voice) {
        int finger = voice.higherFinger();
        int thumb = voice.toFinger() == 1 ? voice.toKey() : voice.fromKey();
        int other = voice.toFinger() == 1 ? voice.fromKey() : voice.toKey();
        boolean room = HandPlaces.isBlack(other) && !HandPlaces.isBlack(thumb);
        long cost = (room ? PASS_UNDER_BLACK : PASS) - PER_SEMITONE * voice.span();
        if (finger == 4) cost -= FOURTH_PER_SEMITONE * voice.span();
        if (finger == 2) cost += SECOND_FINGER;
        return HandPlaces.isBlack(thumb) && !HandPlaces.isBlack(other) ? cost + UP_TO_BLACK : cost;
    }
}
