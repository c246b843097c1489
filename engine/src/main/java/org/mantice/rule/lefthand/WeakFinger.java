package org.mantice.rule.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The little finger is weak everywhere, and the fourth is awkward on a chord button. */
public final class WeakFinger implements Rule<ButtonMoment> {
    /** Estimate. */
    static final int FIVE_ON_BASS = 250;
    /** Estimate. */
    static final int FIVE_ON_CHORD = 1_500;
    /** Estimate. */
    static final int FOUR_ON_CHORD = 300;

    private static final RuleInfo INFO = RuleInfo.of("left-hand.weak-finger", RuleSet.JUMP_COST, "estimate");

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
        List<Fact> facts = new ArrayList<>();
        long cost = 0;
        for (int i = 0; i < moment.buttons().size(); i++) {
            int one = cost(moment, i);
            cost += one;
            if (one > 0) facts.add(Fact.of(INFO.id() + ".fact", moment.fingers().get(i), moment.name(i)));
        }
        return new Reasons(cost, facts);
    }

    private static int cost(ButtonMoment moment, int button) {
        int finger = moment.fingers().get(button);
        if (moment.buttons().get(button).row().isChord())
            return finger == 5 ? FIVE_ON_CHORD : finger == 4 ? FOUR_ON_CHORD : 0;
        return finger == 5 ? FIVE_ON_BASS : 0;
    }
}
