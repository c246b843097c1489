package org.mantice.plugins.firstyear;

import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Stroke;

/** Short strokes keep the bellows near and even while the arm is still learning. */
public final class ShortStrokes implements Rule<Stroke> {
    private static final RuleInfo INFO = RuleInfo.of(
            "first-year.short-strokes", RuleSet.BELLOWS_POLICY, "common practice, no source; sizes estimate");
    private static final int FREE_MEASURES = 2;
    private static final long PER_HALF_BEAT = 200;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<Stroke> reach() {
        return Stroke.class;
    }

    @Override
    public long cost(Stroke stroke) {
        return PER_HALF_BEAT * beyond(stroke);
    }

    @Override
    public Reasons explain(Stroke stroke) {
        int beyond = beyond(stroke);
        if (beyond == 0) return Reasons.NOTHING;
        return Reasons.of(
                PER_HALF_BEAT * beyond, Fact.of("first-year.short-strokes.fact", stroke.beats(), FREE_MEASURES));
    }

    private static int beyond(Stroke stroke) {
        return Math.max(0, stroke.halfBeats() - FREE_MEASURES * stroke.measureHalfBeats());
    }
}
