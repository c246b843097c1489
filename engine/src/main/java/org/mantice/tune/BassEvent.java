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
        boolean tiedBack,
        BassMarks marks) {
    public BassEvent {
        pitches = pitches.stream().sorted().toList();
        if (!duration.isPositive())
            throw new IllegalArgumentException("duration is " + duration + "; allowed: above 0");
    }

    /** An event without marks. */
    public BassEvent(
            MusicalTime offset,
            MusicalTime duration,
            List<Pitch> pitches,
            Optional<BassChordType> chord,
            boolean tiedBack) {
        this(offset, duration, pitches, chord, tiedBack, BassMarks.NONE);
    }

    /** An event without a tie and marks. */
    public BassEvent(MusicalTime offset, MusicalTime duration, List<Pitch> pitches, Optional<BassChordType> chord) {
        this(offset, duration, pitches, chord, false);
    }

    public static BassEvent rest(MusicalTime offset, MusicalTime duration) {
        return new BassEvent(offset, duration, List.of(), Optional.empty());
    }

    /** The same with other marks. */
    public BassEvent with(BassMarks others) {
        return new BassEvent(offset, duration, pitches, chord, tiedBack, others);
    }

    public boolean isRest() {
        return pitches.isEmpty();
    }

    public MusicalTime end() {
        return offset.plus(duration);
    }
}
