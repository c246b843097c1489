package org.mantice.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A tune as written: one melody, chord symbols, perhaps a bass staff.
 *
 * @param title may be empty
 * @param dance the dance or style that the source names (waltz, polka …), in lower case; chooses an assumed tempo
 * @param measures one or more
 */
public record Tune(String title, Optional<String> dance, List<Measure> measures) {
    public Tune {
        measures = List.copyOf(measures);
        if (measures.isEmpty()) throw new IllegalArgumentException("measures is empty; allowed: one or more");
    }

    public Measure measure(int index) {
        return measures.get(index);
    }

    /** The same with another measure in the place of one; {@code index} from 0. */
    public Tune withMeasure(int index, Measure measure) {
        List<Measure> changed = new ArrayList<>(measures);
        changed.set(index, measure);
        return new Tune(title, dance, changed);
    }

    public boolean hasNotes() {
        return measures.stream().anyMatch(Measure::hasNotes);
    }

    /** Whether two chords stand at one place anywhere. */
    public boolean hasAlternateChords() {
        return chords().anyMatch(chord -> chord.alternate().isPresent());
    }

    /** Whether a chord that may be left out stands anywhere. */
    public boolean hasOptionalChords() {
        return chords().anyMatch(PlacedChord::optional);
    }

    private Stream<PlacedChord> chords() {
        return measures.stream().flatMap(measure -> measure.chords().stream());
    }

    public boolean hasChords() {
        return measures.stream().anyMatch(measure -> !measure.chords().isEmpty());
    }

    public boolean hasBassStaff() {
        return measures.stream().anyMatch(measure -> measure.bass().stream()
                .anyMatch(e -> !e.pitches().isEmpty()));
    }
}
