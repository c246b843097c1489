package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 2: one point (with the thumb) or two for every semitone below the relaxed span. */
final class SmallSpan extends PublishedRule<FingerPair> {
    SmallSpan() {
        super("small-span", FingerPair.class);
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        int closer = Math.max(0, from.row(to).minRelaxed() - from.span(to));
        return (from.hasThumb(to) ? 1L : 2L) * closer;
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }
}
