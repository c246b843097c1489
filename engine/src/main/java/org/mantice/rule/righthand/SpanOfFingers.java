package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Two fingers after each other, in legato, farther apart or closer than they like. Crossings are priced by
 * {@link ThumbPassing}; where two lines run together, the easier one counts. */
final class SpanOfFingers implements Rule<FingerPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.span",
            RuleSet.FINGERING_SPAN,
            "Parncutt et al. 1997, table of spans, scaled to the hand; prices estimate");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerPair> reach() {
        return FingerPair.class;
    }

    @Override
    public long cost(FingerPair step) {
        if (step.gapMillis() > 0 || step.move() == HandMove.LIFT) return 0;
        long least = Long.MAX_VALUE;
        for (FingerPair.Voice voice : step.voices())
            least = Math.min(least, strain(voice, step.to().handSpanTenths()));
        return least;
    }

    @Override
    public Reasons explain(FingerPair step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                "fingering.span.fact",
                                HandPlaces.name(step.melody().fromKey()),
                                step.melody().fromFinger(),
                                HandPlaces.name(step.melody().toKey()),
                                step.melody().toFinger()));
    }

    private static long strain(FingerPair.Voice voice, int handSpanTenths) {
        if (voice.fromFinger() == voice.toFinger() || voice.interval() == 0 || voice.span() < 0) return 0;
        return Strain.of(voice.lowerFinger(), voice.higherFinger(), voice.span(), handSpanTenths);
    }
}
