package org.mantice.plugins.firstyear;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.ReedBank;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.player.BassMethod;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.PassChoice;

/** Small steps for the contract tests. */
final class Moments {
    private Moments() {}

    static FingerMoment finger(int key, int finger) {
        return FingerMoment.struck(List.of(key), List.of(finger), 28, 400, 80);
    }

    static FingerPair legato(FingerMoment from, HandMove move, FingerMoment to) {
        return new FingerPair(from, to, move, 400, 0, false);
    }

    static FingerPair withGap(FingerMoment from, HandMove move, FingerMoment to) {
        return new FingerPair(from, to, move, 400, 200, false);
    }

    static PassChoice pass(int number, String register, int octave) {
        return new PassChoice(
                number,
                2,
                new RegisterSwitch(register, register, Set.of(ReedBank.MIDDLE_8), true, 500),
                octave,
                60,
                67);
    }

    /** The hand at the C column with one button down. */
    static ButtonMoment button(BassRow row) {
        return new ButtonMoment(
                List.of(new BassButton(row, 0)),
                List.of(row.isChord() ? 3 : 4),
                0,
                List.of(0),
                BassMethod.FOUR_THREE_TWO,
                row.isChord() ? ButtonMoment.Bass.NONE : ButtonMoment.Bass.ROOT,
                false,
                new TreeSet<>(),
                new TreeSet<>(),
                List.of());
    }
}
