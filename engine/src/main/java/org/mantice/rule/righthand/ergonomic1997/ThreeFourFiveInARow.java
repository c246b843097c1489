package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerTriple;

/** Rule 7: one point where the fingers 3, 4 and 5 play three notes in a row, in any order. */
final class ThreeFourFiveInARow extends PublishedRule<FingerTriple> {
    ThreeFourFiveInARow() {
        super("three-four-five", FingerTriple.class);
    }

    @Override
    long points(FingerTriple step) {
        Tone before = Tone.of(step.before());
        Tone middle = Tone.of(step.middle());
        Tone after = Tone.of(step.after());
        int fingers = 1 << before.finger() | 1 << middle.finger() | 1 << after.finger();
        return fingers == (1 << 3 | 1 << 4 | 1 << 5) ? 1 : 0;
    }

    @Override
    List<Tone> tones(FingerTriple step) {
        return Tone.of(step);
    }
}
