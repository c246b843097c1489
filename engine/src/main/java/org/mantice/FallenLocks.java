package org.mantice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.mantice.layer.lefthand.Presses;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.Lock;
import org.mantice.plan.Sentence;
import org.mantice.tune.WrittenPlace;

/**
 * Finds locks that have lost what they speak of, as after an edit of the tune: a pass that is gone, a note that is not
 * struck in it, a press that is not made. A lock on every pass stays while one pass is left that it speaks of. Whether
 * locks can be kept together is another question, and the planner's.
 *
 * <p>Time and memory grow with the number of notes and beats played.
 */
public final class FallenLocks {
    /** A written measure as played in a pass. */
    private record Played(int pass, int measure) {}

    private final Performance performance;
    private final Presses presses;
    private final Set<Played> played = new HashSet<>();

    private FallenLocks(Performance performance) {
        this.performance = performance;
        this.presses = Presses.of(performance);
        for (PlayedMeasure measure : performance.measures()) played.add(new Played(measure.pass(), measure.written()));
    }

    /**
     * Those of the locks that have no place in a tune as played, in their order.
     *
     * @param performance with the passes that are to be planned
     */
    public static List<FallenLock> among(List<Lock> locks, Performance performance) {
        if (locks.isEmpty()) return List.of();
        FallenLocks finder = new FallenLocks(performance);
        List<FallenLock> fallen = new ArrayList<>();
        for (Lock lock : locks) finder.reason(lock).ifPresent(reason -> fallen.add(new FallenLock(lock, reason)));
        return List.copyOf(fallen);
    }

    private Optional<Sentence> reason(Lock lock) {
        List<Integer> passes = IntStream.rangeClosed(1, performance.passes().size())
                .filter(lock::appliesTo)
                .boxed()
                .toList();
        String words = lock.words(place -> Places.words(performance.tune(), place));
        if (passes.isEmpty())
            return Optional.of(Sentence.of("lock-of-pass-gone", "There is no such pass any more: {0}.", words));
        if (lock instanceof Lock.Buttons buttons
                && passes.stream().noneMatch(pass -> presses.isAt(pass, buttons.place())))
            return Optional.of(
                    Sentence.of("lock-of-press-gone", "The left hand presses nothing there any more: {0}.", words));
        if (lock instanceof Lock.Finger finger && passes.stream().noneMatch(pass -> isStruck(pass, finger)))
            return Optional.of(Sentence.of("lock-of-note-gone", "There is no such note any more: {0}.", words));
        if (lock instanceof Lock.Turn turn && passes.stream().noneMatch(pass -> isPlayed(pass, turn.place())))
            return Optional.of(Sentence.of("lock-of-measure-gone", "The measure is not played any more: {0}.", words));
        return Optional.empty();
    }

    private boolean isPlayed(int pass, WrittenPlace place) {
        return played.contains(new Played(pass, place.measure()));
    }

    /** Grace notes have no fingers to lock. */
    private boolean isStruck(int pass, Lock.Finger lock) {
        for (TrebleMoment moment : performance.treble())
            if (moment.graceIndex() == 0
                    && moment.place().equals(lock.place())
                    && performance.passOf(moment) == pass
                    && lock.note() < moment.notes().size()) return true;
        return false;
    }
}
