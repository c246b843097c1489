package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonPair;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Jumps of three columns or more, however slow: three is already large for many players. */
public final class WideJump implements Rule<ButtonPair> {
    /** Common practice, no source. */
    static final int LARGE_FROM = 3;
    /** Estimate; for a jump of three columns. */
    static final int LARGE = 300;
    /** Estimate; for each column more. */
    static final int PER_COLUMN = 150;

    private static final RuleInfo INFO =
            RuleInfo.of("left-hand.wide-jump", RuleSet.JUMP_COST, "common practice, no source; number: estimate");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<ButtonPair> reach() {
        return ButtonPair.class;
    }

    @Override
    public long cost(ButtonPair pair) {
        return pair.columns() < LARGE_FROM ? 0 : LARGE + (long) PER_COLUMN * (pair.columns() - LARGE_FROM);
    }

    @Override
    public Reasons explain(ButtonPair pair) {
        long cost = cost(pair);
        if (cost == 0) return Reasons.NOTHING;
        return Reasons.of(
                cost,
                Fact.of(
                        INFO.id() + ".fact",
                        pair.columns(),
                        Words.column(pair.from().handColumn()),
                        Words.column(pair.to().handColumn())));
    }
}
