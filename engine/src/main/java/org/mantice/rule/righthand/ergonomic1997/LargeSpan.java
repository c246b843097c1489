package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;

/** Rule 3: one point (with the thumb) or two for every semitone above the relaxed span. */
final class LargeSpan extends PublishedRule<FingerPair> {
    LargeSpan() {
        super("large-span", FingerPair.class);
    }

    @Override
    long points(FingerPair step) {
        Tone from = Tone.of(step.from());
        Tone to = Tone.of(step.to());
        int wider = Math.max(0, from.span(to) - from.row(to).maxRelaxed());
        return (from.hasThumb(to) ? 1L : 2L) * wider;
    }

    @Override
    List<Tone> tones(FingerPair step) {
        return Tone.of(step);
    }
}
