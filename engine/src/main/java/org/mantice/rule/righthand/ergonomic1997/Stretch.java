package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 1: two points for every semitone beyond the comfortable spans. */
final class Stretch extends PublishedRule<FingerPair> {
    Stretch() {
        super("stretch", FingerPair.class);
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        return 2L * from.discomfort(to);
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }
}
