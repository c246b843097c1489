package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Chords made of more than one chord button; a bass button that is held with them does not count. */
public final class ManyButtons implements Rule<ButtonMoment> {
    /** Estimate: less than a missing tone, so that Am7 over four tones is worth a second button only where it helps. */
    static final int PER_BUTTON = 400;

    private static final RuleInfo INFO = RuleInfo.of("left-hand.many-buttons", RuleSet.JUMP_COST, "estimate");

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
        return (long) PER_BUTTON * extra(moment);
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        int extra = extra(moment);
        if (extra == 0) return Reasons.NOTHING;
        return Reasons.of(
                (long) PER_BUTTON * extra,
                Fact.of(INFO.id() + ".fact", moment.buttons().size()));
    }

    private static int extra(ButtonMoment moment) {
        int withBass = moment.bass() == ButtonMoment.Bass.NONE ? 0 : 1;
        return Math.max(0, moment.buttons().size() - withBass - 1);
    }
}
