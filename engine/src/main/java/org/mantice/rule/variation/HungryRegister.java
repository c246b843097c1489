package org.mantice.rule.variation;

import org.mantice.rule.Fact;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Every reed of a register takes air in every note of the pass. */
public final class HungryRegister implements Rule<PassChoice> {
    private static final RuleInfo INFO = RuleInfo.of(
            "variation.hungry-register", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
    private static final long REED_BEYOND_ONE = 60;

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
        return REED_BEYOND_ONE * (choice.register().reedsPerKey() - 1);
    }

    @Override
    public Reasons explain(PassChoice choice) {
        if (choice.register().reedsPerKey() == 1) return Reasons.NOTHING;
        return Reasons.of(
                REED_BEYOND_ONE * (choice.register().reedsPerKey() - 1),
                Fact.of(
                        "variation.hungry-register.fact",
                        choice.register().name(),
                        choice.register().reedsPerKey()));
    }
}
