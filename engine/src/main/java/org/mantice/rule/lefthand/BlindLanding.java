package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonPair;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/**
 * A move of two columns or more that ends away from the buttons that the instrument marks, usually C, E and A-flat,
 * which the finger can feel. A move by one column keeps touch and is free.
 */
public final class BlindLanding implements Rule<ButtonPair> {
    /** Estimate; for each column between the landing and the nearest marked one. */
    static final int PER_COLUMN = 100;
    /** Estimate; further away it grows no more. */
    static final int MOST_COLUMNS = 2;

    private static final RuleInfo INFO = RuleInfo.of(
            "left-hand.blind-landing",
            RuleSet.JUMP_COST,
            "marked buttons C, E, Ab: encyclopaedia articles on the Stradella bass; numbers: estimate");

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
        return pair.columns() < 2 ? 0 : (long) PER_COLUMN * away(pair);
    }

    @Override
    public Reasons explain(ButtonPair pair) {
        long cost = cost(pair);
        if (cost == 0) return Reasons.NOTHING;
        return Reasons.of(
                cost, Fact.of(INFO.id() + ".fact", Words.column(pair.to().handColumn())));
    }

    private static int away(ButtonPair pair) {
        return Math.min(MOST_COLUMNS, pair.columnsToMark().orElse(MOST_COLUMNS));
    }
}
