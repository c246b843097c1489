package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Buttons that stand in for those that players usually take: custom comes first. */
public final class Substitutes implements Rule<ButtonMoment> {
    /** Estimate. */
    static final int PER_REASON = 600;

    private static final RuleInfo INFO =
            RuleInfo.of("left-hand.substitutes", RuleSet.JUMP_COST, "common practice, no source; number: estimate");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<ButtonMoment> reach() {
        return ButtonMoment.class;
    }

    @Override
    public long cost(ButtonMoment moment) {
        return (long) PER_REASON * moment.substitutions().size();
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        if (moment.substitutions().isEmpty()) return Reasons.NOTHING;
        return Reasons.of(
                (long) PER_REASON * moment.substitutions().size(),
                Fact.of(INFO.id() + ".fact", String.join("; ", moment.substitutions())));
    }
}
