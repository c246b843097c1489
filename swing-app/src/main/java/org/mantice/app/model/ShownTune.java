package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import org.mantice.fault.ManticeException;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.TrebleMoment;
import org.mantice.tune.Tune;

/**
 * The tune as the sheet shows it: with the edits of now, whether or not there are plans for it yet. Remembers the last
 * one, so that asking again costs nothing.
 */
final class ShownTune {
    private Optional<Performance> planned = Optional.empty();
    private Optional<Tune> edited = Optional.empty();
    private Optional<Wishes> wishes = Optional.empty();
    private Optional<Performance> shown = Optional.empty();

    /** @param edited the tune as written, with the edits */
    Optional<Performance> of(PlannerState state, Optional<Tune> edited) {
        Optional<Wishes> wished = Optional.of(state.setup().wishes());
        boolean same = isSame(planned, state.performance()) && isSame(this.edited, edited) && wished.equals(wishes);
        if (!same) {
            wishes = wished;
            planned = state.performance();
            this.edited = edited;
            shown = find(state);
        }
        return shown;
    }

    private static boolean isSame(Optional<?> one, Optional<?> other) {
        return one.orElse(null) == other.orElse(null);
    }

    private Optional<Performance> find(PlannerState state) {
        if (edited.isEmpty()) return planned;
        try {
            if (planned.isEmpty())
                return Optional.of(
                        Performer.perform(edited.get(), state.setup().wishes().settings(edited.get())));
            Performance asPlanned = planned.get();
            Performance now = Performer.perform(edited.get(), asPlanned.settings());
            return Optional.of(now.tune().equals(asPlanned.tune()) ? asPlanned : now);
        } catch (ManticeException | IllegalArgumentException e) {
            // Why it cannot be played stands in the answer.
            return planned;
        }
    }

    /** Whether decisions made for one performance have their places in another: same order of play, same notes. */
    static boolean haveSamePlaces(Performance one, Performance other) {
        if (one == other) return true;
        return samePlay(one.measures(), other.measures()) && sameNotes(one.treble(), other.treble());
    }

    private static boolean samePlay(List<PlayedMeasure> one, List<PlayedMeasure> other) {
        if (one.size() != other.size()) return false;
        for (int i = 0; i < one.size(); i++)
            if (one.get(i).written() != other.get(i).written()
                    || one.get(i).pass() != other.get(i).pass()) return false;
        return true;
    }

    private static boolean sameNotes(List<TrebleMoment> one, List<TrebleMoment> other) {
        if (one.size() != other.size()) return false;
        for (int i = 0; i < one.size(); i++)
            if (one.get(i).measure() != other.get(i).measure()
                    || !one.get(i).place().equals(other.get(i).place())) return false;
        return true;
    }
}
