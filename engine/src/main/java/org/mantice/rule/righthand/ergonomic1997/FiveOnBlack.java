package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 11: two points for each white note just before or after a fifth finger on black. */
final class FiveOnBlack extends PublishedRule<FingerPair> {
    FiveOnBlack() {
        super("five-on-black", FingerPair.class);
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        return isSo(from, to) || isSo(to, from) ? 2 : 0;
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }

    private static boolean isSo(Tone fifth, Tone beside) {
        return fifth.finger() == 5 && fifth.isBlack() && !beside.isBlack();
    }
}
