package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 9: one point where third and fourth finger are neighbours in time, the third on white, the fourth on black. */
final class FourOnBlackBesideThree extends PublishedRule<FingerPair> {
    FourOnBlackBesideThree() {
        super("four-on-black", FingerPair.class);
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        return isSo(from, to) || isSo(to, from) ? 1 : 0;
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }

    private static boolean isSo(Tone third, Tone fourth) {
        return third.finger() == 3 && fourth.finger() == 4 && !third.isBlack() && fourth.isBlack();
    }
}
