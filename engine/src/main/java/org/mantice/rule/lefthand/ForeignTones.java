package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Tones that sound and that the chord symbol does not name. */
public final class ForeignTones implements Rule<ButtonMoment> {
    /** Estimate: a wrong tone is worse than a missing one. */
    static final int PER_TONE = 1_200;

    private static final RuleInfo INFO = RuleInfo.of("left-hand.foreign-tones", RuleSet.JUMP_COST, "estimate");

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
        return (long) PER_TONE * moment.foreign().size();
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        if (moment.foreign().isEmpty()) return Reasons.NOTHING;
        return Reasons.of(
                (long) PER_TONE * moment.foreign().size(), Fact.of(INFO.id() + ".fact", Words.tones(moment.foreign())));
    }
}
