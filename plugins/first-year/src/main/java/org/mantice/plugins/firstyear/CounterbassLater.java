package org.mantice.plugins.firstyear;

import org.mantice.instrument.BassRow;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The counterbass row comes after the first year: the fundamental of the chord will do. */
public final class CounterbassLater implements Rule<ButtonMoment> {
    private static final RuleInfo INFO =
            RuleInfo.of("first-year.counterbass-later", RuleSet.JUMP_COST, "common practice, no source; size estimate");
    private static final long PER_BUTTON = 4 * UNIT;

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
        return PER_BUTTON * counterbasses(moment);
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        long buttons = counterbasses(moment);
        if (buttons == 0) return Reasons.NOTHING;
        return Reasons.of(PER_BUTTON * buttons, Fact.of("first-year.counterbass-later.fact", buttons));
    }

    private static long counterbasses(ButtonMoment moment) {
        return moment.buttons().stream()
                .filter(b -> b.row() == BassRow.COUNTERBASS)
                .count();
    }
}
