package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/**
 * While a chord lasts the bass takes turns between root and fifth; the third is a colour, the root again is dull. On the
 * way to the next chord a note outside the key is one too.
 */
public final class BassVariety implements Rule<ButtonMoment> {
    /** Estimate. */
    static final int ROOT_AGAIN = 450;
    /** Estimate. */
    static final int THIRD = 200;
    /** Estimate. */
    static final int CHROMATIC = 200;

    private static final RuleInfo INFO =
            RuleInfo.of("left-hand.bass-variety", RuleSet.JUMP_COST, "common practice, no source; numbers: estimate");

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
        if (moment.bass() == ButtonMoment.Bass.CHROMATIC) return CHROMATIC;
        if (!moment.changeDue()) return 0;
        return switch (moment.bass()) {
            case ROOT -> ROOT_AGAIN;
            case THIRD -> THIRD;
            case FIFTH, PASSING, CHROMATIC, OTHER, NONE -> 0;
        };
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        long cost = cost(moment);
        if (cost == 0) return Reasons.NOTHING;
        String key =
                switch (moment.bass()) {
                    case ROOT -> ".root-again";
                    case CHROMATIC -> ".chromatic";
                    default -> ".third";
                };
        return Reasons.of(cost, Fact.of(INFO.id() + key, moment.name(0)));
    }
}
