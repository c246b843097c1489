package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 10, second part: two points for each white note just before or after a thumb on black. */
final class ThumbOnBlackBesideWhite extends PublishedRule<FingerPair> {
    ThumbOnBlackBesideWhite() {
        super("thumb-on-black-beside-white", FingerPair.class);
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

    private static boolean isSo(Tone thumb, Tone beside) {
        return thumb.finger() == 1 && thumb.isBlack() && !beside.isBlack();
    }
}
