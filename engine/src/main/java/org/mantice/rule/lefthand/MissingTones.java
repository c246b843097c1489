package org.mantice.rule.lefthand;

import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Tones of the chord symbol that its buttons leave out; tones that a button is built without are not counted. */
public final class MissingTones implements Rule<ButtonMoment> {
    /** Estimate: the ear misses a tone less than the hand would a change of place every beat. */
    static final int PER_TONE = 700;

    private static final RuleInfo INFO = RuleInfo.of("left-hand.missing-tones", RuleSet.JUMP_COST, "estimate");

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
        return (long) PER_TONE * moment.missing().size();
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        if (moment.missing().isEmpty()) return Reasons.NOTHING;
        return Reasons.of(
                (long) PER_TONE * moment.missing().size(), Fact.of(INFO.id() + ".fact", Words.tones(moment.missing())));
    }
}
