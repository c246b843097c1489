package org.mantice.layer.lefthand;

import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * A press of the left hand whose buttons are still open.
 *
 * @param measure index of the played measure
 * @param written how long the note lasts that is written for it
 * @param span presses with the same number belong to one chord in one measure
 */
record Beat(
        int pass,
        int measure,
        WrittenPlace place,
        MusicalTime onset,
        long onsetMicros,
        long releaseMicros,
        MusicalTime written,
        Wanted wanted,
        int span) {
    /** The same with another release and span. */
    Beat with(long release, int otherSpan) {
        return new Beat(pass, measure, place, onset, onsetMicros, release, written, wanted, otherSpan);
    }
}
