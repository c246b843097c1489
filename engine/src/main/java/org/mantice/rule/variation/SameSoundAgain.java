package org.mantice.rule.variation;

import java.util.EnumSet;
import java.util.Set;
import org.mantice.instrument.ReedBank;
import org.mantice.rule.Fact;
import org.mantice.rule.PassPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A pass that sounds like the one before is dull; one bank more or less is hardly heard. */
public final class SameSoundAgain implements Rule<PassPair> {
    private static final RuleInfo INFO =
            RuleInfo.of("variation.same-sound", RuleSet.REPEAT_VARIATION, "common practice, no source; sizes estimate");
    private static final long SAME = 1_600;
    private static final long ONE_BANK = 400;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<PassPair> reach() {
        return PassPair.class;
    }

    @Override
    public long cost(PassPair pair) {
        return switch (distance(pair)) {
            case 0 -> SAME;
            case 1 -> ONE_BANK;
            default -> 0;
        };
    }

    @Override
    public Reasons explain(PassPair pair) {
        int distance = distance(pair);
        if (distance > 1) return Reasons.NOTHING;
        return Reasons.of(
                distance == 0 ? SAME : ONE_BANK,
                Fact.of(
                        "variation.same-sound.fact",
                        pair.previous().register().name(),
                        pair.next().register().name(),
                        distance));
    }

    /** Reed banks that differ; an octave counts as two. */
    private static int distance(PassPair pair) {
        Set<ReedBank> before = pair.previous().register().banks();
        Set<ReedBank> after = pair.next().register().banks();
        EnumSet<ReedBank> differing = EnumSet.noneOf(ReedBank.class);
        for (ReedBank bank : ReedBank.values()) if (before.contains(bank) != after.contains(bank)) differing.add(bank);
        return differing.size()
                + 2 * Math.abs(pair.next().octave() - pair.previous().octave());
    }
}
