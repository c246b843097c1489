package org.mantice.layer.lefthand;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.mantice.performance.Places;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.search.Contradiction;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Restriction;
import org.mantice.tune.ChordSymbol;

/** Locks on buttons as restrictions of states, or a smallest set of locks that cannot hold together. */
final class LeftHandLocks {
    private final LeftHandScore score;
    private final LayeredGraph graph;
    private final List<Lock.Buttons> locks;

    LeftHandLocks(LeftHandScore score, LayeredGraph graph, List<Lock> locks) {
        this.score = score;
        this.graph = graph;
        this.locks = locks.stream()
                .filter(Lock.Buttons.class::isInstance)
                .map(Lock.Buttons.class::cast)
                .toList();
    }

    Restriction restriction() {
        return restriction(locks);
    }

    private Restriction restriction(List<Lock.Buttons> some) {
        Restriction restriction = Restriction.free();
        for (var stage : allowed(some).entrySet()) restriction = restriction.allowing(stage.getKey(), stage.getValue());
        return restriction;
    }

    /**
     * A smallest set of locks that cannot hold, if there is one: a single one whose buttons are not to be had at its
     * place, or two that ask for different buttons there or for two sets of buttons while one chord lasts.
     */
    Optional<Obstacle> contradiction() {
        return Contradiction.among(locks, this::canHold).map(clash -> obstacle(clash.demands()));
    }

    private Obstacle obstacle(List<Lock.Buttons> clash) {
        String names = clash.stream().map(this::words).collect(Collectors.joining("; "));
        return new Obstacle(
                "locks-contradict",
                clash.size() > 1
                        ? Sentence.of("locks-contradict", "These locks contradict each other: {0}.", names)
                        : alone(clash.get(0), names),
                clash.stream()
                        .map(lock -> Sentence.of("release-lock", "Release the lock on {0}.", words(lock)))
                        .toList());
    }

    private Sentence alone(Lock.Buttons lock, String name) {
        return stages(lock).isEmpty()
                ? Sentence.of(
                        "lock-where-nothing-is-pressed",
                        "This lock cannot hold: {0}. The left hand presses nothing there.",
                        name)
                : Sentence.of(
                        "lock-without-such-choice",
                        "This lock cannot hold: {0}. The left hand has no such choice there.",
                        name);
    }

    private String words(Lock.Buttons lock) {
        return lock.words(place -> Places.words(score.tune, place));
    }

    private boolean canHold(List<Lock.Buttons> some) {
        return some.stream().noneMatch(lock -> stages(lock).isEmpty())
                && (some.isEmpty() || graph.hasPath(restriction(some)));
    }

    /** Allowed states by stage, for the stages of which the locks speak. */
    private Map<Integer, BitSet> allowed(List<Lock.Buttons> some) {
        Map<Integer, BitSet> allowed = new TreeMap<>();
        for (Lock.Buttons lock : some)
            for (int stage : stages(lock)) allowed.merge(stage, states(lock, stage), LeftHandLocks::both);
        return allowed;
    }

    private List<Integer> stages(Lock.Buttons lock) {
        List<Integer> stages = score.at(lock.place()).stream()
                .filter(stage -> lock.appliesTo(score.stages.get(stage).beat().pass()))
                .toList();
        return lock.pass().isPresent() ? stages : ofOneChord(lock, stages);
    }

    /** Those with the chord that the buttons are for: the first that they can play; all if they can play none. */
    private List<Integer> ofOneChord(Lock.Buttons lock, List<Integer> stages) {
        Optional<ChordSymbol> meant = stages.stream()
                .filter(stage -> !states(lock, stage).isEmpty())
                .findFirst()
                .flatMap(this::chord);
        return meant.isEmpty()
                ? stages
                : stages.stream().filter(stage -> chord(stage).equals(meant)).toList();
    }

    private Optional<ChordSymbol> chord(int stage) {
        return score.stages.get(stage).beat().wanted() instanceof Wanted.OfChord wanted
                ? Optional.of(wanted.chord())
                : Optional.empty();
    }

    private BitSet states(Lock.Buttons lock, int stage) {
        StateSpace space = score.stages.get(stage).space();
        BitSet states = new BitSet();
        for (int state = 0; state < space.size(); state++)
            if (new TreeSet<>(space.moment(state).buttons()).equals(lock.buttons())) states.set(state);
        return states;
    }

    private static BitSet both(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.and(other);
        return both;
    }
}
