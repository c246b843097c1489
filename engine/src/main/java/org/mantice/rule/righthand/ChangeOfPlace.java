package org.mantice.rule.righthand;

import java.util.Locale;
import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The hand changes its place. Small moves are cheaper than large ones, slow ones than fast ones, and a silence
 * makes room. */
final class ChangeOfPlace implements Rule<FingerPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.place-change",
            RuleSet.FINGERING_SPAN,
            "estimate; the unit of all rules is an ordinary change by three keys");

    private static final long MOVE = 550;
    /** Less than a reach by one key, so that a hand does not lie askew only to move less far. */
    private static final long PER_KEY = 150;

    /** A hand that opens or closes about a finger on its key has a hold. */
    private static final long MOVE_WITH_HOLD = 200;

    /** Trading fingers on a struck key moves the hand as it goes, at any speed. */
    private static final long TRADE = 100;

    private static final long TRADE_PER_KEY = 50;
    private static final int FARTHEST_KEYS = 10;
    /** From this silence on a change costs the least share. */
    private static final long LONG_GAP_MILLIS = 600;

    private static final long LEAST_PER_MILLE = 200;

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
        if (step.move() == HandMove.STAY) return 0;
        int keys = Math.min(
                FARTHEST_KEYS, Math.abs(step.to().handPlace() - step.from().handPlace()));
        if (step.move() == HandMove.REPEATED_NOTE) return TRADE + TRADE_PER_KEY * keys;
        long base = step.move() == HandMove.STRETCH ? MOVE_WITH_HOLD : MOVE;
        long cost = (base + PER_KEY * keys) * Haste.perMille(step.availableMillis()) / 1_000;
        long gap = Math.min(LONG_GAP_MILLIS, step.gapMillis());
        return cost * (1_000 - (1_000 - LEAST_PER_MILLE) * gap / LONG_GAP_MILLIS) / 1_000;
    }

    @Override
    public Reasons explain(FingerPair step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                "fingering.place-change.fact."
                                        + step.move()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', '-'),
                                Math.abs(step.to().handPlace() - step.from().handPlace()),
                                step.availableMillis(),
                                step.gapMillis()));
    }
}
