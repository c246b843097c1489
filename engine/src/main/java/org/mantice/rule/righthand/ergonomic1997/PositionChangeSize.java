package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerTriple;

/** Rule 5: one point for every semitone by which first and third of three notes miss comfort. */
final class PositionChangeSize extends PublishedRule<FingerTriple> {
    PositionChangeSize() {
        super("position-change-size", FingerTriple.class);
    }

    @Override
    long points(FingerTriple step) {
        Tone before = Tone.of(step.before());
        Tone after = Tone.of(step.after());
        return before.discomfort(after);
    }

    @Override
    List<Tone> tones(FingerTriple step) {
        return Tone.of(step);
    }
}
