package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonMoment;
import org.mantice.rule.ButtonPair;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A move of the hand between a bass and its chord: the chord finger should rest beside the bass finger. */
public final class DividedChord implements Rule<ButtonPair> {
    /** Estimate. */
    static final int PER_COLUMN = 150;
    /** Estimate; further apart it grows no more, since the jump itself does. */
    static final int MOST_COLUMNS = 3;

    private static final RuleInfo INFO =
            RuleInfo.of("left-hand.divided-chord", RuleSet.JUMP_COST, "common practice, no source; numbers: estimate");

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
        boolean ownChord =
                pair.from().bass() != ButtonMoment.Bass.NONE && pair.to().bass() == ButtonMoment.Bass.NONE;
        return ownChord ? (long) PER_COLUMN * Math.min(MOST_COLUMNS, pair.columns()) : 0;
    }

    @Override
    public Reasons explain(ButtonPair pair) {
        long cost = cost(pair);
        if (cost == 0) return Reasons.NOTHING;
        return Reasons.of(
                cost,
                Fact.of(INFO.id() + ".fact", pair.from().name(0), pair.to().name(0), pair.columns()));
    }
}
