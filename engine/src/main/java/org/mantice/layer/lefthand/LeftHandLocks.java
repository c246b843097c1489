package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;

/** Locks on buttons as restrictions of states, or a smallest set of locks that cannot hold together. */
final class LeftHandLocks {
    private final LeftHandScore score;
    private final List<Lock.Buttons> locks;

    LeftHandLocks(LeftHandScore score, List<Lock> locks) {
        this.score = score;
        this.locks = locks.stream()
                .filter(Lock.Buttons.class::isInstance)
                .map(Lock.Buttons.class::cast)
                .toList();
    }

    /** Allowed states by stage, for the stages that locks speak of. */
    Map<Integer, BitSet> allowed() {
        Map<Integer, BitSet> allowed = new HashMap<>();
        for (Lock.Buttons lock : locks)
            for (int stage = 0; stage < score.stages.size(); stage++)
                if (speaksOf(lock, stage)) allowed.merge(stage, states(lock, stage), LeftHandLocks::both);
        return allowed;
    }

    /**
     * A smallest set of locks that cannot hold: a single one whose buttons are not to be had at its place, else two
     * that ask for different buttons there. Nothing else can clash, since every move of the hand is possible.
     */
    Optional<Obstacle> contradiction() {
        for (Lock.Buttons lock : locks) {
            boolean found = false;
            for (int stage = 0; stage < score.stages.size(); stage++) {
                if (!speaksOf(lock, stage)) continue;
                found = true;
                if (states(lock, stage).isEmpty())
                    return Optional.of(obstacle(
                            "The lock on " + words(lock) + " cannot hold: the left hand has no such choice there.",
                            List.of(lock)));
            }
            if (!found)
                return Optional.of(obstacle(
                        "The lock on " + words(lock) + " cannot hold: the left hand plays nothing there.",
                        List.of(lock)));
        }
        for (int one = 0; one < locks.size(); one++)
            for (int other = one + 1; other < locks.size(); other++)
                if (clash(locks.get(one), locks.get(other)))
                    return Optional.of(obstacle(
                            "The locks on " + words(locks.get(one)) + " and on " + words(locks.get(other))
                                    + " contradict each other.",
                            List.of(locks.get(one), locks.get(other))));
        return Optional.empty();
    }

    private boolean clash(Lock.Buttons one, Lock.Buttons other) {
        if (!one.place().equals(other.place()) || one.buttons().equals(other.buttons())) return false;
        for (int stage = 0; stage < score.stages.size(); stage++)
            if (speaksOf(one, stage) && speaksOf(other, stage)) return true;
        return false;
    }

    private boolean speaksOf(Lock.Buttons lock, int stage) {
        Beat beat = score.stages.get(stage).beat();
        return beat.place().equals(lock.place()) && lock.appliesTo(beat.pass());
    }

    private BitSet states(Lock.Buttons lock, int stage) {
        StateSpace space = score.stages.get(stage).space();
        BitSet states = new BitSet();
        for (int state = 0; state < space.size(); state++)
            if (new TreeSet<>(space.moments().get(state).buttons()).equals(lock.buttons())) states.set(state);
        return states;
    }

    private static BitSet both(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.and(other);
        return both;
    }

    private static Obstacle obstacle(String message, List<Lock.Buttons> locks) {
        List<String> remedies = new ArrayList<>();
        for (Lock.Buttons lock : locks) remedies.add("Release the lock on " + words(lock) + ".");
        return new Obstacle("locks-contradict", message, remedies);
    }

    private static String words(Lock.Buttons lock) {
        String buttons = String.join(" + ", lock.buttons().stream().map(Object::toString).toList());
        String pass = lock.pass().isPresent() ? "pass " + lock.pass().getAsInt() : "every pass";
        return buttons + " (" + pass + ", written measure " + (lock.place().measure() + 1) + ", "
                + lock.place().offset() + " after its start)";
    }
}
