package org.mantice.tune;

import java.util.List;
import java.util.Optional;

/**
 * A note, chord or rest of a written bass staff.
 *
 * @param pitches ascending; empty for a rest; a chord button is written as its root alone or as all its notes
 * @param chord the letter at the event; empty for single bass notes
 * @param tiedBack every pitch is held over from the event before, so nothing is pressed anew
 */
public record BassEvent(
        MusicalTime offset,
        MusicalTime duration,
        List<Pitch> pitches,
        Optional<BassChordType> chord,
        boolean tiedBack) {
    public BassEvent {
        pitches = pitches.stream().sorted().toList();
        if (!duration.isPositive())
            throw new IllegalArgumentException("duration is " + duration + "; allowed: above 0");
    }

    /** An event without a tie. */
    public BassEvent(MusicalTime offset, MusicalTime duration, List<Pitch> pitches, Optional<BassChordType> chord) {
        this(offset, duration, pitches, chord, false);
    }
}
