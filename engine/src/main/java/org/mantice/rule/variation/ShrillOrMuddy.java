package org.mantice.rule.variation;

import org.mantice.rule.Fact;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** High reeds on a high tune are shrill, low reeds on a low tune are muddy. */
public final class ShrillOrMuddy implements Rule<PassChoice> {
    private static final RuleInfo INFO = RuleInfo.of(
            "variation.shrill-or-muddy", RuleSet.REPEAT_VARIATION, "common practice, no source; limits estimate");
    /** E7, MIDI. */
    private static final int HIGHEST_PLEASANT = 100;
    /** A2, MIDI. */
    private static final int LOWEST_CLEAR = 45;

    private static final long PER_SEMITONE = 120;

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
        return PER_SEMITONE * (tooHigh(choice) + tooLow(choice));
    }

    @Override
    public Reasons explain(PassChoice choice) {
        if (tooHigh(choice) + tooLow(choice) == 0) return Reasons.NOTHING;
        return Reasons.of(
                PER_SEMITONE * (tooHigh(choice) + tooLow(choice)),
                Fact.of("variation.shrill-or-muddy.fact", choice.register().name(), tooHigh(choice), tooLow(choice)));
    }

    private static int tooHigh(PassChoice choice) {
        return Math.max(0, choice.highestSounding() - HIGHEST_PLEASANT);
    }

    private static int tooLow(PassChoice choice) {
        return Math.max(0, LOWEST_CLEAR - choice.lowestSounding());
    }
}
