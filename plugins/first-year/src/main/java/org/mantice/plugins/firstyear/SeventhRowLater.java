package org.mantice.plugins.firstyear;

import org.mantice.instrument.BassRow;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The far rows come later: the major button stands in for the seventh, though a tone is missing. */
public final class SeventhRowLater implements Rule<ButtonMoment> {
    private static final RuleInfo INFO =
            RuleInfo.of("first-year.seventh-row-later", RuleSet.JUMP_COST, "common practice, no source; size estimate");
    private static final long PER_BUTTON = 3 * UNIT;

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
        return PER_BUTTON * farButtons(moment);
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        long buttons = farButtons(moment);
        if (buttons == 0) return Reasons.NOTHING;
        return Reasons.of(PER_BUTTON * buttons, Fact.of("first-year.seventh-row-later.fact", buttons));
    }

    private static long farButtons(ButtonMoment moment) {
        return moment.buttons().stream()
                .filter(b -> b.row() == BassRow.SEVENTH || b.row() == BassRow.DIMINISHED)
                .count();
    }
}
