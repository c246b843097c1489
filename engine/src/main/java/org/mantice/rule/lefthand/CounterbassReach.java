package org.mantice.rule.lefthand;

import org.mantice.instrument.BassRow;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The counterbass row lies furthest in: the finger bends under the hand, the second and third most. */
public final class CounterbassReach implements Rule<ButtonMoment> {
    /** Estimate; by the fourth or fifth finger. */
    static final int OUTER_FINGER = 150;
    /** Estimate; by the second or third finger. */
    static final int INNER_FINGER = 300;

    private static final RuleInfo INFO = RuleInfo.of(
            "left-hand.counterbass-reach",
            RuleSet.JUMP_COST,
            "R. Stradling, rev. 2014 (the fourth finger takes the counterbass); numbers: estimate");

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
        long cost = 0;
        for (int i = 0; i < moment.buttons().size(); i++) cost += cost(moment, i);
        return cost;
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        for (int i = 0; i < moment.buttons().size(); i++)
            if (cost(moment, i) > 0)
                return Reasons.of(
                        cost(moment),
                        Fact.of(
                                INFO.id() + ".fact",
                                moment.name(i),
                                moment.fingers().get(i)));
        return Reasons.NOTHING;
    }

    private static int cost(ButtonMoment moment, int button) {
        if (moment.buttons().get(button).row() != BassRow.COUNTERBASS) return 0;
        return moment.fingers().get(button) >= 4 ? OUTER_FINGER : INNER_FINGER;
    }
}
