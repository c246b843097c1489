package org.mantice.rule.righthand;

import java.util.Optional;
import org.mantice.rule.Fact;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerSpans;
import org.mantice.rule.GiveWay;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Fingers of a chord farther apart or closer than they like. Beyond the practical span the chord must be
 * broken: a ban that gives way. */
final class SpanInChord implements Rule<FingerMoment> {
    private static final RuleInfo INFO = new RuleInfo(
            "fingering.chord-span",
            RuleSet.FINGERING_SPAN,
            "Parncutt et al. 1997, table of spans, scaled to the hand; prices estimate",
            Optional.of(GiveWay.LEGATO));

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerMoment> reach() {
        return FingerMoment.class;
    }

    @Override
    public long cost(FingerMoment step) {
        long worst = 0;
        for (int note = 1; note < step.keys().size(); note++) {
            long beside = strain(step, note - 1, note);
            long across = strain(step, 0, note);
            if (beside == BAN || across == BAN) return BAN;
            worst = Math.max(worst, Math.max(beside, across));
        }
        return worst;
    }

    @Override
    public Reasons explain(FingerMoment step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(cost, Fact.of("fingering.chord-span.fact", KeyWords.of(step), step.fingers()));
    }

    private static long strain(FingerMoment step, int low, int high) {
        int lower = step.fingers().get(low);
        int higher = step.fingers().get(high);
        int span = step.keys().get(high) - step.keys().get(low);
        return FingerSpans.practical(lower, higher, span, step.handSpanTenths())
                ? Strain.of(lower, higher, span, step.handSpanTenths())
                : BAN;
    }
}
