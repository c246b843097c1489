package org.mantice.rule.variation;

import org.mantice.rule.Fact;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The first pass is plain, at its written octave with few reeds, so that the listener learns the tune. */
public final class PlainFirstPass implements Rule<PassChoice> {
    private static final RuleInfo INFO = RuleInfo.of(
            "variation.plain-first", RuleSet.REPEAT_VARIATION, "common practice, no source; sizes estimate");
    private static final long OTHER_OCTAVE = 1_500;
    private static final long REED_BEYOND_ONE = 200;

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
        if (choice.pass() != 1) return 0;
        return octave(choice) + reeds(choice);
    }

    @Override
    public Reasons explain(PassChoice choice) {
        if (cost(choice) == 0) return Reasons.NOTHING;
        return Reasons.of(
                octave(choice) + reeds(choice),
                Fact.of(
                        "variation.plain-first.fact",
                        choice.register().name(),
                        choice.octave(),
                        choice.register().reedsPerKey()));
    }

    private static long octave(PassChoice choice) {
        return OTHER_OCTAVE * Math.abs(choice.octave());
    }

    private static long reeds(PassChoice choice) {
        return REED_BEYOND_ONE * Math.max(0, choice.register().reedsPerKey() - 1);
    }
}
