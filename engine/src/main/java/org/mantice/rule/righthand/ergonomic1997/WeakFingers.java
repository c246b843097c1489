package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerMoment;

/** Rule 6: one point for every use of the fourth or fifth finger. */
final class WeakFingers extends PublishedRule<FingerMoment> {
    WeakFingers() {
        super("weak-finger", FingerMoment.class);
    }

    @Override
    long points(FingerMoment step) {
        Tone tone = Tone.of(step);
        return tone.finger() >= 4 ? 1 : 0;
    }

    @Override
    List<Tone> tones(FingerMoment step) {
        return List.of(Tone.of(step));
    }
}
