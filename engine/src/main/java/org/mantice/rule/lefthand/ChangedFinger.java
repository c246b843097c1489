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

/** Another finger on the button just played: the left hand repeats with the finger that lies there. */
public final class ChangedFinger implements Rule<ButtonPair> {
    /** Estimate. */
    static final int PER_FINGER = 300;

    private static final RuleInfo INFO =
            RuleInfo.of("left-hand.changed-finger", RuleSet.JUMP_COST, "common practice, no source; estimate");

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
        long changes = 0;
        for (int i = 0; i < pair.to().buttons().size(); i++) if (changes(pair.from(), pair.to(), i)) changes++;
        return PER_FINGER * changes;
    }

    @Override
    public Reasons explain(ButtonPair pair) {
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < pair.to().buttons().size(); i++)
            if (changes(pair.from(), pair.to(), i))
                facts.add(Fact.of(
                        INFO.id() + ".fact",
                        pair.to().name(i),
                        pair.to().fingers().get(i)));
        return new Reasons((long) PER_FINGER * facts.size(), facts);
    }

    private static boolean changes(ButtonMoment from, ButtonMoment to, int button) {
        int before = from.buttons().indexOf(to.buttons().get(button));
        return before >= 0 && !from.fingers().get(before).equals(to.fingers().get(button));
    }
}
