package org.mantice.rule.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.instrument.BassRow;
import org.mantice.player.BassMethod;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;

/**
 * Fingers that are not those of the player's method. The fifth of the chord, one column up, belongs to the second
 * finger where the root belongs to the fourth (root 4, chord 3, fifth 2, chord 3), or to the third where the second holds
 * the chord.
 */
public final class FingerMethod implements Rule<ButtonMoment> {
    /** Estimate. */
    static final int PER_FINGER = 600;

    private static final RuleInfo INFO = RuleInfo.of(
            "left-hand.finger-method",
            RuleSet.JUMP_COST,
            "R. Stradling, rev. 2014 (three fingers); the others: common practice, no source; number: estimate");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<ButtonMoment> reach() {
        return ButtonMoment.class;
    }

    @Override
    public long cost(ButtonMoment moment) {
        long strangers = 0;
        for (int i = 0; i < moment.buttons().size(); i++) if (!isOwn(moment, i)) strangers++;
        return PER_FINGER * strangers;
    }

    @Override
    public Reasons explain(ButtonMoment moment) {
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < moment.buttons().size(); i++)
            if (!isOwn(moment, i))
                facts.add(Fact.of(INFO.id() + ".fact", moment.fingers().get(i), moment.name(i)));
        return new Reasons((long) PER_FINGER * facts.size(), facts);
    }

    private static boolean isOwn(ButtonMoment moment, int button) {
        BassRow row = moment.buttons().get(button).row();
        int finger = moment.fingers().get(button);
        boolean secondChordButton = row.isChord()
                && button > 0
                && moment.buttons().get(button - 1).row().isChord();
        if (secondChordButton) return finger <= 3;
        return isOwn(moment.method(), row, finger, isFree(moment.bass()));
    }

    /** The fifth lies under a free finger, and a run takes the fingers in turn. */
    private static boolean isFree(ButtonMoment.Bass bass) {
        return switch (bass) {
            case FIFTH, PASSING, CHROMATIC -> true;
            case ROOT, THIRD, OTHER, NONE -> false;
        };
    }

    private static boolean isOwn(BassMethod method, BassRow row, int finger, boolean free) {
        return switch (method) {
            case FOUR_THREE_TWO ->
                switch (row) {
                    case COUNTERBASS -> finger == 4 || finger == 5;
                    case BASS -> finger == 4 || free && finger <= 3;
                    case MAJOR -> finger == 3;
                    case MINOR -> finger == 2 || finger == 3;
                    case SEVENTH, DIMINISHED -> finger == 2;
                };
            case THREE_TWO -> row.isChord() ? finger == 2 : finger == 3 || row == BassRow.COUNTERBASS && finger == 4;
            case FIVE_FINGER ->
                switch (row) {
                    case COUNTERBASS -> finger >= 4;
                    case BASS -> finger == 4 || free && finger <= 3;
                    case MAJOR, MINOR, SEVENTH, DIMINISHED -> finger <= 3;
                };
        };
    }
}
