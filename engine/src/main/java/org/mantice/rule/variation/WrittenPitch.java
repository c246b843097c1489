package org.mantice.rule.variation;

import org.mantice.instrument.ReedBank;
import org.mantice.rule.Fact;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A register without an 8' bank moves the tune away from its written pitch and sounds thin or dark by itself. */
public final class WrittenPitch implements Rule<PassChoice> {
    private static final RuleInfo INFO = RuleInfo.of(
            "variation.written-pitch", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
    private static final long AWAY = 700;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<PassChoice> reach() {
        return PassChoice.class;
    }

    @Override
    public long cost(PassChoice choice) {
        return choice.register().banks().stream().map(ReedBank::semitones).anyMatch(s -> s == 0) ? 0 : AWAY;
    }

    @Override
    public Reasons explain(PassChoice choice) {
        long cost = cost(choice);
        if (cost == 0) return Reasons.NOTHING;
        return Reasons.of(
                cost, Fact.of("variation.written-pitch.fact", choice.register().name()));
    }
}
