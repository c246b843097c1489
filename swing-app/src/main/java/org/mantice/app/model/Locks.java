package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.instrument.ButtonNames;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;
import org.mantice.rule.RuleSet;
import org.mantice.tune.WrittenPlace;

/** Locks made of decisions, and put among others. */
final class Locks {
    /** As the layer of registers names its choices. */
    private static final String OCTAVE = ", octave ";

    /** As the layer of the bellows names its choice. */
    static final String NO_TURN = "no turn";

    private Locks() {}

    /**
     * The locks that hold a decision or choice; none for a hand place, which follows from its fingers.
     *
     * @param everyPass rather than the decision's own
     * @throws IllegalArgumentException if the value is none of its kind
     */
    static List<Lock> of(Decision decision, boolean everyPass) {
        OptionalInt pass = everyPass ? OptionalInt.empty() : OptionalInt.of(decision.pass());
        String value = decision.value();
        return switch (decision.kind()) {
            case FINGER -> List.of(new Lock.Finger(pass, decision.place(), decision.part(), Integer.parseInt(value)));
            case BUTTONS -> List.of(new Lock.Buttons(pass, decision.place(), ButtonNames.all(value)));
            case TURN -> List.of(new Lock.Turn(pass, decision.place(), !value.equals(NO_TURN)));
            case OCTAVE -> List.of(new Lock.Octave(pass, Integer.parseInt(value)));
            case REGISTER -> register(pass, value);
            case HAND_PLACE -> List.of();
        };
    }

    private static List<Lock> register(OptionalInt pass, String value) {
        int at = value.lastIndexOf(OCTAVE);
        if (at < 0) return List.of(new Lock.Register(pass, value));
        return List.of(
                new Lock.Register(pass, value.substring(0, at)),
                new Lock.Octave(pass, Integer.parseInt(value.substring(at + OCTAVE.length()))));
    }

    /**
     * The locks with another one, in place of those on the same decision. Of a lock on every pass the other passes
     * stay locked.
     */
    static List<Lock> with(List<Lock> locks, Lock added, int passes) {
        List<Lock> kept = new ArrayList<>();
        for (Lock lock : locks) {
            boolean clash = sameDecision(lock, added)
                    && (lock.pass().isEmpty() || added.appliesTo(lock.pass().getAsInt()));
            if (!clash) kept.add(lock);
            else if (lock.pass().isEmpty() && added.pass().isPresent())
                for (int pass = 1; pass <= passes; pass++) if (!added.appliesTo(pass)) kept.add(inPass(lock, pass));
        }
        kept.add(added);
        return kept;
    }

    private static boolean sameDecision(Lock one, Lock other) {
        if (one instanceof Lock.Finger mine && other instanceof Lock.Finger theirs)
            return mine.place().equals(theirs.place()) && mine.note() == theirs.note();
        if (one instanceof Lock.Buttons mine && other instanceof Lock.Buttons theirs)
            return mine.place().equals(theirs.place());
        if (one instanceof Lock.Turn mine && other instanceof Lock.Turn theirs)
            return mine.place().equals(theirs.place());
        return one instanceof Lock.Register && other instanceof Lock.Register
                || one instanceof Lock.Octave && other instanceof Lock.Octave;
    }

    private static Lock inPass(Lock lock, int number) {
        OptionalInt pass = OptionalInt.of(number);
        if (lock instanceof Lock.Finger finger)
            return new Lock.Finger(pass, finger.place(), finger.note(), finger.finger());
        if (lock instanceof Lock.Buttons buttons) return new Lock.Buttons(pass, buttons.place(), buttons.buttons());
        if (lock instanceof Lock.Turn turn) return new Lock.Turn(pass, turn.place(), turn.turn());
        if (lock instanceof Lock.Register register) return new Lock.Register(pass, register.switchId());
        if (lock instanceof Lock.Octave octave) return new Lock.Octave(pass, octave.octave());
        throw new IllegalStateException("no other pass for " + lock);
    }

    /** Those that hold what is decided at a spot. */
    static List<Lock> at(List<Lock> locks, Spot spot) {
        return locks.stream().filter(lock -> holds(lock, spot)).toList();
    }

    private static boolean holds(Lock lock, Spot spot) {
        if (!lock.appliesTo(spot.pass())) return false;
        if (lock instanceof Lock.Finger finger)
            return is(spot, Strip.FINGERS, finger.place()) && finger.note() == spot.part();
        if (lock instanceof Lock.Buttons buttons) return is(spot, Strip.BUTTONS, buttons.place());
        if (lock instanceof Lock.Turn turn) return is(spot, Strip.BELLOWS, turn.place());
        return spot.strip() == Strip.REGISTERS;
    }

    private static boolean is(Spot spot, Strip strip, WrittenPlace place) {
        return spot.strip() == strip && spot.place().equals(place);
    }

    /** The layer that must keep the lock. */
    static RuleSet layer(Lock lock) {
        if (lock instanceof Lock.Finger) return RuleSet.FINGERING_SPAN;
        if (lock instanceof Lock.Buttons) return RuleSet.JUMP_COST;
        if (lock instanceof Lock.Turn) return RuleSet.BELLOWS_POLICY;
        return RuleSet.REPEAT_VARIATION;
    }
}
