package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A finger other than the one printed in the source. Printed fingers are wishes with a price; a lock holds. */
final class AsPrinted implements Rule<FingerMoment> {
    private static final RuleInfo INFO =
            RuleInfo.of("fingering.as-printed", RuleSet.FINGERING_SPAN, "common practice, no source; price estimate");

    private static final long OTHER_FINGER = 3_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerMoment> reach() {
        return FingerMoment.class;
    }

    @Override
    public long cost(FingerMoment step) {
        long others = 0;
        for (int note = 0; note < step.keys().size(); note++)
            if (step.printed().get(note) != 0
                    && !step.printed().get(note).equals(step.fingers().get(note))) others++;
        return others * OTHER_FINGER;
    }

    @Override
    public Reasons explain(FingerMoment step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost, Fact.of("fingering.as-printed.fact", KeyWords.of(step), step.fingers(), step.printed()));
    }
}
