package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.instrument.ButtonNames;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;
import org.mantice.rule.RuleSet;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

class LocksTest {
    private static final WrittenPlace PLACE = new WrittenPlace(3, MusicalTime.of(1, 4));
    private static final OptionalInt EVERY = OptionalInt.empty();
    private static final OptionalInt SECOND = OptionalInt.of(2);

    private static Decision decision(Decision.Kind kind, int part, String value) {
        return new Decision(kind, 2, PLACE, part, value);
    }

    @Test
    void everyKindOfChoiceBecomesItsLock() {
        assertThat(Locks.of(decision(Decision.Kind.FINGER, 1, "4"), false))
                .containsExactly(new Lock.Finger(SECOND, PLACE, 1, 4));
        assertThat(Locks.of(decision(Decision.Kind.BUTTONS, 0, "C bass + C major"), true))
                .containsExactly(new Lock.Buttons(EVERY, PLACE, ButtonNames.all("C major+C bass")));
        assertThat(Locks.of(decision(Decision.Kind.TURN, 0, "turn"), false))
                .containsExactly(new Lock.Turn(SECOND, PLACE, true));
        assertThat(Locks.of(decision(Decision.Kind.TURN, 0, "no turn"), false))
                .containsExactly(new Lock.Turn(SECOND, PLACE, false));
        assertThat(Locks.of(decision(Decision.Kind.REGISTER, 0, "master, octave -1"), false))
                .containsExactly(new Lock.Register(SECOND, "master"), new Lock.Octave(SECOND, -1));
    }

    @Test
    void everyKindOfAPlansOwnDecisionBecomesItsLock() {
        assertThat(Locks.of(decision(Decision.Kind.TURN, 0, "in"), false))
                .containsExactly(new Lock.Turn(SECOND, PLACE, true));
        assertThat(Locks.of(decision(Decision.Kind.REGISTER, 0, "musette"), true))
                .containsExactly(new Lock.Register(EVERY, "musette"));
        assertThat(Locks.of(decision(Decision.Kind.OCTAVE, 0, "1"), true)).containsExactly(new Lock.Octave(EVERY, 1));
        assertThat(Locks.of(decision(Decision.Kind.HAND_PLACE, 0, "31"), true)).isEmpty();
    }

    @Test
    void buttonsThatAreNoneAreRefused() {
        assertThatThrownBy(() -> Locks.of(decision(Decision.Kind.BUTTONS, 0, "H bass"), false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("H bass");
    }

    @Test
    void aLockTakesThePlaceOfOneOnTheSameDecision() {
        Lock three = new Lock.Finger(SECOND, PLACE, 0, 3);
        Lock four = new Lock.Finger(SECOND, PLACE, 0, 4);
        Lock other = new Lock.Finger(SECOND, PLACE, 1, 5);
        Lock turn = new Lock.Turn(SECOND, PLACE, true);

        assertThat(Locks.with(List.of(three, other, turn), four, 3)).containsExactly(other, turn, four);
    }

    @Test
    void aLockOnEveryPassTakesThePlaceOfThoseOnSinglePasses() {
        Lock first = new Lock.Octave(OptionalInt.of(1), 0);
        Lock second = new Lock.Octave(SECOND, 1);
        Lock every = new Lock.Octave(EVERY, -1);

        assertThat(Locks.with(List.of(first, second), every, 3)).containsExactly(every);
    }

    @Test
    void theOtherPassesStayLockedWhenOneIsLockedOtherwise() {
        Lock every = new Lock.Turn(EVERY, PLACE, true);
        Lock second = new Lock.Turn(SECOND, PLACE, false);

        assertThat(Locks.with(List.of(every), second, 3))
                .containsExactly(
                        new Lock.Turn(OptionalInt.of(1), PLACE, true),
                        new Lock.Turn(OptionalInt.of(3), PLACE, true),
                        second);
    }

    @Test
    void locksOnOtherPassesAndPlacesStay() {
        Lock first = new Lock.Buttons(OptionalInt.of(1), PLACE, ButtonNames.all("C bass"));
        Lock elsewhere = new Lock.Buttons(SECOND, new WrittenPlace(4, PLACE.offset()), ButtonNames.all("F bass"));
        Lock second = new Lock.Buttons(SECOND, PLACE, ButtonNames.all("G bass"));

        assertThat(Locks.with(List.of(first, elsewhere), second, 2)).containsExactly(first, elsewhere, second);
    }

    @Test
    void aSpotKnowsTheLocksThatHoldIt() {
        Lock finger = new Lock.Finger(EVERY, PLACE, 1, 4);
        Lock buttons = new Lock.Buttons(SECOND, PLACE, ButtonNames.all("C bass"));
        Lock turn = new Lock.Turn(OptionalInt.of(1), PLACE, true);
        Lock register = new Lock.Register(SECOND, "master");
        List<Lock> all = List.of(finger, buttons, turn, register);

        assertThat(Locks.at(all, new Spot(Strip.FINGERS, 9, 2, PLACE, 1))).containsExactly(finger);
        assertThat(Locks.at(all, new Spot(Strip.FINGERS, 9, 2, PLACE, 0))).isEmpty();
        assertThat(Locks.at(all, new Spot(Strip.BUTTONS, 9, 2, PLACE, 0))).containsExactly(buttons);
        assertThat(Locks.at(all, new Spot(Strip.BELLOWS, 9, 2, PLACE, 0))).isEmpty();
        assertThat(Locks.at(all, new Spot(Strip.BELLOWS, 3, 1, PLACE, 0))).containsExactly(turn);
        assertThat(Locks.at(all, new Spot(Strip.REGISTERS, 8, 2, PLACE, 0))).containsExactly(register);
        assertThat(Locks.at(all, new Spot(Strip.REGISTERS, 0, 1, PLACE, 0))).isEmpty();
    }

    @Test
    void everyLockTouchesItsLayer() {
        assertThat(List.of(
                        Locks.layer(new Lock.Finger(EVERY, PLACE, 1, 4)),
                        Locks.layer(new Lock.Buttons(EVERY, PLACE, ButtonNames.all("C bass"))),
                        Locks.layer(new Lock.Turn(EVERY, PLACE, true)),
                        Locks.layer(new Lock.Register(EVERY, "master")),
                        Locks.layer(new Lock.Octave(EVERY, 0))))
                .containsExactly(
                        RuleSet.FINGERING_SPAN,
                        RuleSet.JUMP_COST,
                        RuleSet.BELLOWS_POLICY,
                        RuleSet.REPEAT_VARIATION,
                        RuleSet.REPEAT_VARIATION);
    }
}
