package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** A key struck again, or held on: fast repetitions want other fingers, slow ones keep the finger, and a held key is
 * not handed over without need. */
final class FingersOnOneKey implements Rule<FingerPair> {
    private static final RuleInfo INFO =
            RuleInfo.of("fingering.one-key", RuleSet.FINGERING_SPAN, "common practice, no source; prices estimate");

    /** Notes faster than this want a change: eighths at 120. */
    private static final long FAST_MILLIS = 250;

    private static final long PER_TEN_MILLIS = 60;
    /** Fast repetitions run from higher fingers to lower ones: 4 3 2 1, 3 2 1. */
    private static final long RISING = 150;

    private static final long CHANGED_WHEN_SLOW = 200;
    private static final long HANDED_OVER = 900;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<FingerPair> reach() {
        return FingerPair.class;
    }

    @Override
    public long cost(FingerPair step) {
        long sum = 0;
        for (int note = 0; note < step.to().keys().size(); note++) {
            int before = step.from().fingerOn(step.to().keys().get(note));
            if (before == 0) continue;
            boolean same = before == step.to().fingers().get(note);
            if (step.to().held().get(note)) sum += same ? 0 : HANDED_OVER;
            else if (step.availableMillis() >= FAST_MILLIS) sum += same ? 0 : CHANGED_WHEN_SLOW;
            else if (same) sum += PER_TEN_MILLIS * (FAST_MILLIS - step.availableMillis()) / 10;
            else sum += before < step.to().fingers().get(note) ? RISING : 0;
        }
        return sum;
    }

    @Override
    public Reasons explain(FingerPair step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                "fingering.one-key.fact",
                                KeyWords.of(step.to()),
                                step.from().fingers(),
                                step.to().fingers(),
                                step.availableMillis()));
    }
}
