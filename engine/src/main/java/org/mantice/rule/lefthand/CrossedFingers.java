package org.mantice.rule.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.ButtonPair;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** With the hand still, the finger nearer the chin reaches below the other, or the other way about. */
public final class CrossedFingers implements Rule<ButtonPair> {
    /** Estimate. */
    static final int PER_CROSSING = 500;

    private static final RuleInfo INFO =
            RuleInfo.of("left-hand.crossed-fingers", RuleSet.JUMP_COST, "common practice, no source; estimate");

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
        if (pair.columns() > 0) return 0;
        long crossings = 0;
        for (int i = 0; i < pair.to().buttons().size(); i++) if (crosses(pair.from(), pair.to(), i) >= 0) crossings++;
        return PER_CROSSING * crossings;
    }

    @Override
    public Reasons explain(ButtonPair pair) {
        if (pair.columns() > 0) return Reasons.NOTHING;
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < pair.to().buttons().size(); i++) {
            int from = crosses(pair.from(), pair.to(), i);
            if (from >= 0)
                facts.add(Fact.of(
                        INFO.id() + ".fact",
                        pair.to().fingers().get(i),
                        pair.to().name(i),
                        pair.from().fingers().get(from),
                        pair.from().name(from)));
        }
        return new Reasons((long) PER_CROSSING * facts.size(), facts);
    }

    /** The first finger of {@code from} that a finger of {@code to} crosses, or -1. */
    private static int crosses(ButtonMoment from, ButtonMoment to, int button) {
        for (int before = 0; before < from.buttons().size(); before++) {
            int fingers =
                    Integer.compare(from.fingers().get(before), to.fingers().get(button));
            int places =
                    Integer.compare(to.offsets().get(button), from.offsets().get(before));
            if (fingers * places < 0) return before;
        }
        return -1;
    }
}
