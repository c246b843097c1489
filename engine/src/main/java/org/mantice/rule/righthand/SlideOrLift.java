package org.mantice.rule.righthand;

import java.util.Optional;
import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.GiveWay;
import org.mantice.rule.HandMove;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** Legato that a slide or a lift must make up: a finger slides cheaply only from a black key to its white neighbour;
 * a lift is not allowed under a slur, unless nothing else is left. */
final class SlideOrLift implements Rule<FingerPair> {
    private static final RuleInfo INFO = new RuleInfo(
            "fingering.legato",
            RuleSet.FINGERING_SPAN,
            "common practice, no source; prices estimate",
            Optional.of(GiveWay.LEGATO));

    private static final long SLIDE_OFF_BLACK = 300;
    private static final long SLIDE = 2_000;
    private static final long LIFT = 2_600;

    /** The same finger on another key after a silence: less, the longer the silence. */
    private static final long HOP = 400;

    private static final long LONG_GAP_MILLIS = 600;

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
        return switch (step.move()) {
            case GLIDE -> hurried(slidesOffBlack(step) ? SLIDE_OFF_BLACK : SLIDE, step);
            case LIFT -> step.slurred() ? BAN : hurried(LIFT, step);
            default -> step.gapMillis() == 0 ? 0 : hop(step);
        };
    }

    @Override
    public Reasons explain(FingerPair step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                step.move() == HandMove.GLIDE
                                        ? "fingering.legato.fact.slide"
                                        : step.move() == HandMove.LIFT
                                                ? "fingering.legato.fact.lift"
                                                : "fingering.legato.fact.hop",
                                KeyWords.of(step.from()),
                                KeyWords.of(step.to())));
    }

    private static long hurried(long cost, FingerPair step) {
        return cost * Haste.perMille(step.availableMillis()) / 1_000;
    }

    private static long hop(FingerPair step) {
        for (FingerPair.Voice voice : step.voices()) if (!voice.hops()) return 0;
        long gap = Math.min(LONG_GAP_MILLIS, step.gapMillis());
        return HOP * (LONG_GAP_MILLIS - gap) / LONG_GAP_MILLIS;
    }

    private static boolean slidesOffBlack(FingerPair step) {
        return step.voices().stream()
                .anyMatch(voice ->
                        voice.hops() && Math.abs(voice.interval()) == 1 && HandPlaces.isBlack(voice.fromKey()));
    }
}
