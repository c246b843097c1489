package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 12: a pass of the thumb costs one point on one level, and three where the thumb is on the upper, black key and
 * the other finger on the lower, white one. */
final class ThumbPass extends PublishedRule<FingerPair> {
    ThumbPass() {
        super("thumb-passing", FingerPair.class);
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        if (!from.hasThumb(to) || from.finger() == to.finger() || from.span(to) >= 0) return 0;
        Tone thumb = from.finger() == 1 ? from : to;
        Tone other = from.finger() == 1 ? to : from;
        if (thumb.isBlack() == other.isBlack()) return 1;
        return thumb.isBlack() ? 3 : 0;
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }
}
