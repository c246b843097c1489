package org.mantice.layer.righthand;

import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerSpans;
import org.mantice.rule.HandMove;

/** Names the move between two postures. */
final class HandMoves {
    /** Shortest silence in which the hand moves freely (estimate). */
    static final long GAP_MILLIS = 60;
    /** A finger slides at most this far (common practice, no source: from a black key to its neighbours). */
    static final int GLIDE_SEMITONES = 2;

    private HandMoves() {}

    /** The two moments as a pair with its move. */
    static FingerPair step(Junction junction, FingerMoment from, FingerMoment to) {
        FingerPair staying = new FingerPair(
                from, to, HandMove.STAY, junction.availableMillis(), junction.gapMillis(), junction.slurred());
        HandMove move = between(staying);
        return move == HandMove.STAY
                ? staying
                : new FingerPair(from, to, move, junction.availableMillis(), junction.gapMillis(), junction.slurred());
    }

    /** The mildest move that explains what the two lines of the music do; {@code pair}'s own move is not looked at. */
    private static HandMove between(FingerPair pair) {
        FingerMoment from = pair.from();
        FingerMoment to = pair.to();
        boolean gap = pair.gapMillis() >= GAP_MILLIS;
        if (from.handPlace() == to.handPlace() && (gap || inOrder(from, to))) return HandMove.STAY;
        if (gap) return HandMove.SHIFT_AT_GAP;
        List<FingerPair.Voice> voices = pair.voices();
        HandMove mildest = of(voices.get(0), to.handSpanTenths());
        if (voices.size() > 1) {
            HandMove other = of(voices.get(1), to.handSpanTenths());
            if (rank(other) < rank(mildest)) mildest = other;
        }
        return mildest;
    }

    private static HandMove of(FingerPair.Voice voice, int handSpanTenths) {
        if (voice.fromFinger() == voice.toFinger()) {
            int far = Math.abs(voice.interval());
            return far == 0 ? HandMove.STRETCH : far <= GLIDE_SEMITONES ? HandMove.GLIDE : HandMove.LIFT;
        }
        if (voice.interval() == 0) return HandMove.REPEATED_NOTE;
        if (!FingerSpans.practical(voice.lowerFinger(), voice.higherFinger(), voice.span(), handSpanTenths))
            return HandMove.LIFT;
        if (!voice.crossesThumb()) return HandMove.STRETCH;
        return voice.toFinger() == 1 ? HandMove.THUMB_UNDER : HandMove.FINGER_OVER;
    }

    private static int rank(HandMove move) {
        return switch (move) {
            case STAY -> 0;
            case STRETCH -> 1;
            case REPEATED_NOTE -> 2;
            case THUMB_UNDER, FINGER_OVER -> 3;
            case SHIFT_AT_GAP -> 4;
            case GLIDE -> 5;
            case LIFT -> 6;
        };
    }

    /** Whether higher keys have higher fingers over both moments, and the same key has the same finger. */
    private static boolean inOrder(FingerMoment from, FingerMoment to) {
        for (int before = 0; before < from.keys().size(); before++)
            for (int after = 0; after < to.keys().size(); after++)
                if (Integer.compare(from.keys().get(before), to.keys().get(after))
                        != Integer.compare(
                                from.fingers().get(before), to.fingers().get(after))) return false;
        return true;
    }
}
