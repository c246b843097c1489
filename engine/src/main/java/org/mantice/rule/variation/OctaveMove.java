package org.mantice.rule.variation;

import org.mantice.rule.Fact;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Playing an octave away from the page is a remedy where no switch gives contrast, not the first choice. */
public final class OctaveMove implements Rule<PassChoice> {
    private static final RuleInfo INFO =
            RuleInfo.of("variation.octave-move", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
    private static final long PER_OCTAVE = 900;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<PassChoice> reach() {
        return PassChoice.class;
    }

    @Override
    public long cost(PassChoice choice) {
        return PER_OCTAVE * Math.abs(choice.octave());
    }

    @Override
    public Reasons explain(PassChoice choice) {
        if (choice.octave() == 0) return Reasons.NOTHING;
        return Reasons.of(
                PER_OCTAVE * Math.abs(choice.octave()), Fact.of("variation.octave-move.fact", choice.octave()));
    }
}
