package org.mantice.rule.bellows;

import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Stroke;

/** Strokes of two, four or eight measures, counted in beats; the first and the last are free. */
public final class WholePhrases implements Rule<Stroke> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.stroke", RuleSet.BELLOWS_POLICY, "common practice, no source; the numbers are estimates");
    private static final long ONE_MEASURE = 400;
    private static final long OTHER_MEASURES = 600;
    private static final long NO_WHOLE_MEASURES = 1_000;

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
        if (stroke.free()) return 0;
        return switch (stroke.wholeMeasures()) {
            case 2, 4, 8 -> 0;
            case 1 -> ONE_MEASURE;
            case 0 -> NO_WHOLE_MEASURES;
            default -> OTHER_MEASURES;
        };
    }

    @Override
    public Reasons explain(Stroke stroke) {
        long cost = cost(stroke);
        if (cost == 0) return Reasons.NOTHING;
        return stroke.wholeMeasures() == 0
                ? Reasons.of(cost, Fact.of("bellows.stroke.beats", stroke.beats()))
                : Reasons.of(cost, Fact.of("bellows.stroke.measures", stroke.wholeMeasures()));
    }
}
