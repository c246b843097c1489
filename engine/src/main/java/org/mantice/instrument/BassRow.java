package org.mantice.instrument;

import java.util.List;

/** A row of the Stradella bass, from the bellows outward. */
public enum BassRow {
    COUNTERBASS(4),
    BASS(0),
    MAJOR(0, 4, 7),
    MINOR(0, 3, 7),
    /** The fifth is left out. */
    SEVENTH(0, 4, 10),
    /** The fifth is left out. */
    DIMINISHED(0, 3, 9);

    private final List<Integer> intervals;

    BassRow(Integer... intervals) {
        this.intervals = List.of(intervals);
    }

    /** Semitones above the root of the column that a button of this row sounds. */
    public List<Integer> intervals() {
        return intervals;
    }

    public boolean isChord() {
        return ordinal() >= MAJOR.ordinal();
    }
}
