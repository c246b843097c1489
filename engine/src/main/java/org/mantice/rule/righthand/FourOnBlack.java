package org.mantice.rule.righthand;

import org.mantice.rule.Fact;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandPlaces;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/** The fourth finger on a black key beside the third on a white one: the shorter reach has the longer way. */
final class FourOnBlack implements Rule<FingerPair> {
    private static final RuleInfo INFO = RuleInfo.of(
            "fingering.four-on-black", RuleSet.FINGERING_SPAN, "Parncutt et al. 1997, rule 9; price estimate");

    private static final long PRICE = 120;

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
        FingerPair.Voice voice = step.melody();
        if (voice.lowerFinger() != 3 || voice.higherFinger() != 4) return 0;
        int third = voice.fromFinger() == 3 ? voice.fromKey() : voice.toKey();
        int fourth = voice.fromFinger() == 4 ? voice.fromKey() : voice.toKey();
        return HandPlaces.isBlack(fourth) && !HandPlaces.isBlack(third) ? PRICE : 0;
    }

    @Override
    public Reasons explain(FingerPair step) {
        long cost = cost(step);
        return cost == 0
                ? Reasons.NOTHING
                : Reasons.of(
                        cost,
                        Fact.of(
                                "fingering.four-on-black.fact",
                                HandPlaces.name(step.melody().fromKey()),
                                HandPlaces.name(step.melody().toKey())));
    }
}
