package org.mantice.plugins.firstyear;

import org.mantice.rule.Fact;
import org.mantice.rule.PassChoice;
import org.mantice.rule.PassPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** One register and one octave from beginning to end: no hand to spare for a switch, no second place to learn. */
public final class OneSound implements Rule<PassPair> {
    private static final RuleInfo INFO =
            RuleInfo.of("first-year.one-sound", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
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
        return sameSound(pair.previous(), pair.next()) ? 0 : COST;
    }

    @Override
    public Reasons explain(PassPair pair) {
        if (cost(pair) == 0) return Reasons.NOTHING;
        return Reasons.of(
                COST,
                Fact.of(
                        "first-year.one-sound.fact",
                        pair.previous().register().name(),
                        pair.previous().octave(),
                        pair.next().register().name(),
                        pair.next().octave()));
    }

    private static boolean sameSound(PassChoice one, PassChoice other) {
        return one.register().name().equals(other.register().name()) && one.octave() == other.octave();
    }
}
