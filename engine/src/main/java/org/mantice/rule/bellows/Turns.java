package org.mantice.rule.bellows;

import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;

/**
 * Every turn interrupts: longer strokes interrupt less. Where the music breathes anyway it interrupts half as much,
 * and not at all in the silence before the next time through.
 */
public final class Turns implements Rule<TurnPlace> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.turns", RuleSet.BELLOWS_POLICY, "common practice, no source; the number is an estimate");
    /** Half an ordinary change of hand position. */
    private static final long EACH = UNIT / 2;

    private static final long AT_A_BREATH = EACH / 2;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<TurnPlace> reach() {
        return TurnPlace.class;
    }

    @Override
    public long cost(TurnPlace place) {
        if (isSilentBetweenPasses(place)) return 0;
        return breathes(place) ? AT_A_BREATH : EACH;
    }

    @Override
    public Reasons explain(TurnPlace place) {
        if (isSilentBetweenPasses(place)) return Reasons.NOTHING;
        return breathes(place)
                ? Reasons.of(AT_A_BREATH, Fact.of("bellows.turns.breath"))
                : Reasons.of(EACH, Fact.of("bellows.turns.each"));
    }

    private static boolean isSilentBetweenPasses(TurnPlace place) {
        return place.mark() == TurnPlace.Mark.PASS && place.turnsInRest();
    }

    private static boolean breathes(TurnPlace place) {
        return place.mark().compareTo(TurnPlace.Mark.STOP) >= 0 || place.turnsInRest();
    }
}
