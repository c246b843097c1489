package org.mantice.rule.variation;

import org.mantice.rule.Fact;
import org.mantice.rule.PassPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Passes grow: start light, end full. A pass with no more reeds than the one before costs, each reed fewer more. */
public final class GrowingSound implements Rule<PassPair> {
    private static final RuleInfo INFO =
            RuleInfo.of("variation.growing", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
    private static final long PER_REED_FEWER = 350;
    private static final long NO_MORE = 250;

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
        int more = more(pair);
        return more > 0 ? 0 : NO_MORE - PER_REED_FEWER * more;
    }

    @Override
    public Reasons explain(PassPair pair) {
        long cost = cost(pair);
        if (cost == 0) return Reasons.NOTHING;
        return Reasons.of(
                cost,
                Fact.of(
                        "variation.growing.fact",
                        pair.previous().register().name(),
                        pair.next().register().name(),
                        -more(pair)));
    }

    private static int more(PassPair pair) {
        return pair.next().register().reedsPerKey() - pair.previous().register().reedsPerKey();
    }
}
