package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerMoment;

/** Rule 10, first part: one point for the thumb on a black key. */
final class ThumbOnBlack extends PublishedRule<FingerMoment> {
    ThumbOnBlack() {
        super("thumb-on-black", FingerMoment.class);
    }

    @Override
    long points(FingerMoment step) {
        Tone tone = Tone.of(step);
        return tone.finger() == 1 && tone.isBlack() ? 1 : 0;
    }

    @Override
    List<Tone> tones(FingerMoment step) {
        return List.of(Tone.of(step));
    }
}
