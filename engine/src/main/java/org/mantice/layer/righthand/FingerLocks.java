package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.search.Restriction;
import org.mantice.tune.WrittenPlace;

/** Turns locks on fingers into the states they leave. */
final class FingerLocks {
    private final HandMusic music;
    private final HandLattice lattice;

    FingerLocks(HandMusic music, HandLattice lattice) {
        this.music = music;
        this.lattice = lattice;
    }

    static List<Lock.Finger> of(List<Lock> locks) {
        List<Lock.Finger> fingers = new ArrayList<>();
        for (Lock lock : locks) if (lock instanceof Lock.Finger finger) fingers.add(finger);
        return fingers;
    }

    Restriction restriction(List<Lock.Finger> locks) {
        Restriction restriction = Restriction.free();
        for (Lock.Finger lock : locks)
            for (int stage : stages(lock)) {
                BitSet allowed = new BitSet();
                for (int state = 0; state < lattice.states(stage); state++)
                    if (lattice.posture(stage, state).fingers().get(lock.note()) == lock.finger()) allowed.set(state);
                restriction = restriction.allowing(stage, allowed);
            }
        return restriction;
    }

    /** The first lock that speaks of a note that is not there. */
    Optional<Obstacle> lost(List<Lock.Finger> locks) {
        return locks.stream()
                .filter(lock -> stages(lock).isEmpty())
                .findFirst()
                .map(lock -> Obstacle.of(
                        Sentence.of(
                                "lock-without-note", "There is no such note to lock: {0}.", lock.words(music::words)),
                        List.of(Sentence.of("free-this-lock", "Free this lock."))));
    }

    private List<Integer> stages(Lock.Finger lock) {
        List<Integer> stages = new ArrayList<>();
        for (int index : stages(lock.pass(), lock.place()))
            if (lock.note() >= 0 && lock.note() < music.moment(index).keys().size()) stages.add(index);
        return stages;
    }

    /** The moments of the event at a place, its grace notes left out. */
    List<Integer> stages(OptionalInt pass, WrittenPlace place) {
        List<Integer> stages = new ArrayList<>();
        for (int index = 0; index < music.size(); index++)
            if (music.played(index).graceIndex() == 0
                    && music.played(index).place().equals(place)
                    && (pass.isEmpty() || pass.getAsInt() == music.pass(index))) stages.add(index);
        return stages;
    }
}
