package org.mantice.rule.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.player.BassMethod;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.ButtonMoment.Bass;
import org.mantice.rule.ButtonPair;

/** Steps on which every left-hand rule is at work somewhere and at rest somewhere. */
final class LeftHandSteps {
    private static final SortedSet<Integer> NONE = new TreeSet<>();

    private LeftHandSteps() {}

    static ButtonMoment one(BassRow row, int column, int finger, int hand, int offset, Bass bass) {
        return new ButtonMoment(
                List.of(new BassButton(row, column)),
                List.of(finger),
                hand,
                List.of(offset),
                BassMethod.FOUR_THREE_TWO,
                bass,
                false,
                NONE,
                NONE,
                List.of());
    }

    static final ButtonMoment C_BASS = one(BassRow.BASS, 0, 4, 0, 0, Bass.ROOT);
    static final ButtonMoment C_MAJOR = one(BassRow.MAJOR, 0, 3, 0, 45, Bass.NONE);
    static final ButtonMoment G_FIFTH = one(BassRow.BASS, 1, 2, 0, 100, Bass.FIFTH);
    static final ButtonMoment A_BASS = one(BassRow.BASS, 3, 4, 3, 0, Bass.ROOT);

    private static ButtonMoment due(ButtonMoment moment) {
        return new ButtonMoment(
                moment.buttons(),
                moment.fingers(),
                moment.handColumn(),
                moment.offsets(),
                moment.method(),
                moment.bass(),
                true,
                NONE,
                NONE,
                List.of());
    }

    private static ButtonMoment chord(List<Integer> missing, List<Integer> foreign, List<String> substitutions) {
        return new ButtonMoment(
                List.of(new BassButton(BassRow.MAJOR, 1)),
                List.of(3),
                1,
                List.of(45),
                BassMethod.FOUR_THREE_TWO,
                Bass.NONE,
                false,
                new TreeSet<>(missing),
                new TreeSet<>(foreign),
                substitutions);
    }

    static List<ButtonMoment> moments() {
        List<ButtonMoment> moments = new ArrayList<>(List.of(
                C_BASS,
                C_MAJOR,
                G_FIFTH,
                A_BASS,
                due(C_BASS),
                due(G_FIFTH),
                due(one(BassRow.COUNTERBASS, 0, 4, 0, -46, Bass.THIRD)),
                one(BassRow.COUNTERBASS, 1, 3, 0, 54, Bass.ROOT),
                one(BassRow.COUNTERBASS, -1, 5, 0, -146, Bass.ROOT),
                one(BassRow.MAJOR, 0, 5, 1, -54, Bass.NONE),
                one(BassRow.MAJOR, 0, 4, 0, 45, Bass.NONE),
                one(BassRow.MINOR, 4, 2, 0, 491, Bass.NONE),
                chord(List.of(5), List.of(), List.of("the instrument has no seventh row")),
                chord(List.of(), List.of(2, 9), List.of())));
        for (BassMethod method : BassMethod.values())
            for (int finger = 2; finger <= 5; finger++)
                moments.add(new ButtonMoment(
                        List.of(new BassButton(BassRow.BASS, 0)),
                        List.of(finger),
                        0,
                        List.of(0),
                        method,
                        Bass.ROOT,
                        false,
                        NONE,
                        NONE,
                        List.of()));
        moments.add(new ButtonMoment(
                List.of(
                        new BassButton(BassRow.BASS, -1),
                        new BassButton(BassRow.MINOR, -1),
                        new BassButton(BassRow.DIMINISHED, -1)),
                List.of(4, 3, 2),
                -1,
                List.of(0, 91, 182),
                BassMethod.FIVE_FINGER,
                Bass.ROOT,
                false,
                NONE,
                NONE,
                List.of()));
        return List.copyOf(moments);
    }

    static List<ButtonPair> pairs() {
        return List.of(
                new ButtonPair(C_BASS, C_MAJOR, 0, 300, OptionalInt.of(0)),
                new ButtonPair(C_MAJOR, C_MAJOR, 0, 300, OptionalInt.of(0)),
                new ButtonPair(C_MAJOR, one(BassRow.MAJOR, 0, 2, 0, 45, Bass.NONE), 0, 300, OptionalInt.of(0)),
                new ButtonPair(C_MAJOR, A_BASS, 393, 200, OptionalInt.of(1)),
                new ButtonPair(C_BASS, A_BASS, 393, 0, OptionalInt.of(1)),
                new ButtonPair(A_BASS, C_BASS, 393, 200, OptionalInt.of(0)),
                new ButtonPair(C_MAJOR, one(BassRow.BASS, 2, 4, 2, 0, Bass.ROOT), 335, 200, OptionalInt.of(2)),
                new ButtonPair(A_BASS, C_MAJOR, 393, 200, OptionalInt.of(0)),
                new ButtonPair(G_FIFTH, one(BassRow.MAJOR, 1, 3, 0, 145, Bass.NONE), 0, 100, OptionalInt.of(1)));
    }
}
