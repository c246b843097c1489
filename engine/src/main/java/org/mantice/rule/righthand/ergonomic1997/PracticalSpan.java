package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import java.util.Optional;
import org.mantice.rule.FingerPair;
import org.mantice.rule.GiveWay;

/** The model offers only fingerings within the practical spans, and no finger on two different keys in a row. */
final class PracticalSpan extends PublishedRule<FingerPair> {
    PracticalSpan() {
        super("practical-span", FingerPair.class, Optional.of(GiveWay.LEGATO));
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        return from.isPractical(to) ? 0 : BAN;
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }
}
