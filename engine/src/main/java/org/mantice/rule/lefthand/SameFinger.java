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

/** The same finger on two different buttons one after the other: it has to hop, and the two cannot be joined. */
public final class SameFinger implements Rule<ButtonPair> {
    /** Estimate. */
    static final int PER_FINGER = 350;

    private static final RuleInfo INFO =
            RuleInfo.of("left-hand.same-finger", RuleSet.JUMP_COST, "common practice, no source; estimate");

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
        long hops = 0;
        for (int i = 0; i < pair.to().buttons().size(); i++) if (hopsFrom(pair.from(), pair.to(), i) >= 0) hops++;
        return PER_FINGER * hops;
    }

    @Override
    public Reasons explain(ButtonPair pair) {
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < pair.to().buttons().size(); i++) {
            int from = hopsFrom(pair.from(), pair.to(), i);
            if (from >= 0)
                facts.add(Fact.of(
                        INFO.id() + ".fact",
                        pair.to().fingers().get(i),
                        pair.from().name(from),
                        pair.to().name(i)));
        }
        return new Reasons((long) PER_FINGER * facts.size(), facts);
    }

    /** The index in {@code from} of another button under the same finger, or -1. */
    private static int hopsFrom(ButtonMoment from, ButtonMoment to, int button) {
        int before = from.fingers().indexOf(to.fingers().get(button));
        return before >= 0 && !from.buttons().get(before).equals(to.buttons().get(button)) ? before : -1;
    }
}
