package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerTriple;

/** Rule 4: first and third of three notes beyond comfort: two points for a full change of position, one for a half.
 * Full means that the thumb plays the middle note, which lies between the others, and that these are beyond the
 * practical span. A finger on the first and third note at different keys spans nothing (our reading). */
final class PositionChangeCount extends PublishedRule<FingerTriple> {
    PositionChangeCount() {
        super("position-change-count", FingerTriple.class);
    }

    @Override
    long points(FingerTriple step) {
        Tone before = Tone.of(step.before());
        Tone middle = Tone.of(step.middle());
        Tone after = Tone.of(step.after());
        if (before.discomfort(after) == 0) return 0;
        boolean between = Integer.signum(middle.key() - before.key()) * Integer.signum(after.key() - middle.key()) > 0;
        return middle.finger() == 1 && between && !before.isPractical(after) ? 2 : 1;
    }

    @Override
    List<Tone> tones(FingerTriple step) {
        return Tone.of(step);
    }
}
