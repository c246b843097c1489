package org.mantice.rule.variation;

import org.mantice.rule.Fact;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/**
 * Playing an octave away from the page is a remedy where no switch gives contrast, not the first choice; down is rarer
 * than up, where a melody covers less of the accompaniment.
 */
public final class OctaveMove implements Rule<PassChoice> {
    private static final RuleInfo INFO =
            RuleInfo.of("variation.octave-move", RuleSet.REPEAT_VARIATION, "common practice, no source; size estimate");
    private static final long PER_OCTAVE_UP = 900;
    private static final long PER_OCTAVE_DOWN = 2_400;

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
        return price(choice);
    }

    @Override
    public Reasons explain(PassChoice choice) {
        if (choice.octave() == 0) return Reasons.NOTHING;
        return Reasons.of(price(choice), Fact.of("variation.octave-move.fact", choice.octave()));
    }

    private static long price(PassChoice choice) {
        return choice.octave() > 0 ? PER_OCTAVE_UP * choice.octave() : PER_OCTAVE_DOWN * -choice.octave();
    }
}
