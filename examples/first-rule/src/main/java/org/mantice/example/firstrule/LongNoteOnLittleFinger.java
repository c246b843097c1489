package org.mantice.example.firstrule;

import java.util.List;
import org.mantice.rule.Fact;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A long note held by the little finger alone tires a small hand. */
public final class LongNoteOnLittleFinger implements Rule<FingerMoment> {
    private static final RuleInfo INFO = RuleInfo.of(
            "first-rule.long-little-finger", RuleSet.FINGERING_SPAN, "common practice, no source; sizes estimate");
    private static final long LONG_MILLIS = 900;
    private static final long COST = 400;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerMoment> reach() {
        return FingerMoment.class;
    }

    @Override
    public long cost(FingerMoment moment) {
        return moment.fingers().equals(List.of(5)) && moment.durationMillis() >= LONG_MILLIS ? COST : 0;
    }

    @Override
    public Reasons explain(FingerMoment moment) {
        if (cost(moment) == 0) return Reasons.NOTHING;
        return Reasons.of(COST, Fact.of("first-rule.long-little-finger.fact", moment.durationMillis()));
    }
}
