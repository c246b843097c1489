package org.mantice.rule.variation;

import org.mantice.rule.Fact;
import org.mantice.rule.PassPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Passes grow: start light, end full. Each reed fewer than in the pass before costs. */
public final class GrowingSound implements Rule<PassPair> {
    private static final RuleInfo INFO =
            RuleInfo.of("variation.growing", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
    private static final long PER_REED = 350;

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
        return PER_REED * fewer(pair);
    }

    @Override
    public Reasons explain(PassPair pair) {
        int fewer = fewer(pair);
        if (fewer == 0) return Reasons.NOTHING;
        return Reasons.of(
                PER_REED * fewer,
                Fact.of(
                        "variation.growing.fact",
                        pair.previous().register().name(),
                        pair.next().register().name(),
                        fewer));
    }

    private static int fewer(PassPair pair) {
        return Math.max(
                0,
                pair.previous().register().reedsPerKey() - pair.next().register().reedsPerKey());
    }
}
