package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 8: one point where the fourth finger follows the third. */
final class ThreeToFour extends PublishedRule<FingerPair> {
    ThreeToFour() {
        super("three-to-four", FingerPair.class);
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        return from.finger() == 3 && to.finger() == 4 ? 1 : 0;
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }
}
