package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonPair;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/**
 * A move of the hand place: the time that it needs after Fitts against the time that there is. The fourth finger
 * slides along the bass row, so a move from C to A passes over G and D.
 */
public final class HandMove implements Rule<ButtonPair> {
    /** Estimate: a move that needs all the time there is costs as much as somewhat less than half a right-hand change. */
    static final int AT_FULL_TIME = 450;
    /** Estimate: less time than this counts as this, since the note before can be cut. */
    static final int LEAST_MILLIS = 100;

    private static final RuleInfo INFO = RuleInfo.of(
            "left-hand.hand-move",
            RuleSet.JUMP_COST,
            "P. M. Fitts, J. Exp. Psychology 47, 1954, in the form log2(D/W + 1) (from memory); numbers: estimate");

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
        return Math.min(
                Integer.MAX_VALUE, AT_FULL_TIME * pair.neededMillis() / Math.max(LEAST_MILLIS, pair.availableMillis()));
    }

    @Override
    public Reasons explain(ButtonPair pair) {
        long cost = cost(pair);
        if (cost == 0) return Reasons.NOTHING;
        int from = pair.from().handColumn();
        int to = pair.to().handColumn();
        return Reasons.of(
                cost,
                Fact.of(INFO.id() + ".move", Words.column(from), Words.column(to), pair.columns()),
                passed(Words.passedOver(from, to)),
                Fact.of(INFO.id() + ".time", pair.neededMillis(), pair.availableMillis()));
    }

    private static Fact passed(String columns) {
        return columns.isEmpty() ? Fact.of(INFO.id() + ".passes-none") : Fact.of(INFO.id() + ".passes", columns);
    }
}
