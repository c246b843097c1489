package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;

/**
 * The chords of one measure, taken one by one: of several at one place the first counts, and the first alternate right
 * behind it. An alternate that follows no other chord at its place is a chord like any other.
 */
final class PlacedChords {
    /** What became of a symbol. */
    enum Outcome {
        TAKEN,
        /** It says again what stands at its place. */
        REPEATED,
        BESIDE,
        AFTER_END
    }

    private final MusicalTime length;
    private final boolean verbatim;
    private final List<PlacedChord> placed = new ArrayList<>();
    private final Set<MusicalTime> taken = new TreeSet<>();
    private Optional<MusicalTime> before = Optional.empty();
    private boolean beforeTaken;

    /** @param verbatim several may stand at one place */
    PlacedChords(MusicalTime length, boolean verbatim) {
        this.length = length;
        this.verbatim = verbatim;
    }

    List<PlacedChord> chords() {
        return placed;
    }

    Outcome add(ScoreChord chord) {
        if (!chord.onset().isBefore(length)) return says(chord) ? Outcome.REPEATED : Outcome.AFTER_END;
        if (chord.manner().alternate() && before.equals(Optional.of(chord.onset()))) return alternate(chord);
        before = Optional.of(chord.onset());
        beforeTaken = taken.add(chord.onset()) || verbatim;
        if (!beforeTaken) return says(chord) ? Outcome.REPEATED : Outcome.BESIDE;
        placed.add(new PlacedChord(
                chord.onset(),
                chord.symbol(),
                Optional.empty(),
                chord.manner().optional(),
                chord.manner().proposed()));
        return Outcome.TAKEN;
    }

    private Outcome alternate(ScoreChord chord) {
        if (!verbatim && says(chord)) return Outcome.REPEATED;
        PlacedChord first = placed.get(placed.size() - 1);
        if (!beforeTaken || first.alternate().isPresent()) return Outcome.BESIDE;
        placed.set(placed.size() - 1, first.withAlternate(chord.symbol()));
        return Outcome.TAKEN;
    }

    private boolean says(ScoreChord chord) {
        ChordSymbol symbol = chord.symbol();
        return placed.stream()
                .filter(each -> each.offset().equals(chord.onset()))
                .anyMatch(
                        each -> each.symbol().equals(symbol) || each.alternate().equals(Optional.of(symbol)));
    }
}
