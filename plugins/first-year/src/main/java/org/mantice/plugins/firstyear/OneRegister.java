package org.mantice.plugins.firstyear;

import org.mantice.rule.Fact;
import org.mantice.rule.PassPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** One register from beginning to end: no hand to spare for a switch. */
public final class OneRegister implements Rule<PassPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "first-year.one-register", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
    private static final long COST = 3 * UNIT;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<PassPair> reach() {
        return PassPair.class;
    }

    @Override
    public long cost(PassPair pair) {
        return pair.previous().register().equals(pair.next().register()) ? 0 : COST;
    }

    @Override
    public Reasons explain(PassPair pair) {
        if (cost(pair) == 0) return Reasons.NOTHING;
        return Reasons.of(
                COST,
                Fact.of(
                        "first-year.one-register.fact",
                        pair.previous().register().name(),
                        pair.next().register().name()));
    }
}
