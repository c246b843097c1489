package org.mantice.harmony;

import org.mantice.tune.Key;
import org.mantice.tune.MusicalTime;

/**
 * A beat that can have a chord of its own.
 *
 * @param measure index from 0
 * @param key in which it is read
 * @param beatPlace the number of its kind of place in a measure: 0, 1 in two; 2 to 4 in three (first, second and inner,
 *     third); 5 to 8 in four or more (first, inner, half, last)
 * @param strain place in a strain of eight measures: twice the measure, plus one in its second half; 16 at a strain's end
 * @param repeated a section or ending begins here, so the chord is written again
 * @param begins a note begins with the beat
 */
record Slot(
        int measure,
        MusicalTime offset,
        Key key,
        int beatPlace,
        Cadence cadence,
        int strain,
        boolean repeated,
        boolean begins,
        SlotMelody melody,
        NotesAround around) {
    /** Where a slot stands as to cadences; the order is that of the tables. */
    enum Cadence {
        NONE,
        LAST_OF_TUNE,
        LAST_OF_STRAIN,
        IN_LAST_MEASURE,
        BEFORE_LAST_MEASURE,
        IN_MEASURE_BEFORE_LAST,
        LAST_OF_FOUR_MEASURES,
        FIRST_OF_STRAIN,
        IN_PICKUP,
        IN_FOURTH_MEASURE
    }

    boolean isInside() {
        return beatPlace != 0 && beatPlace != 2 && beatPlace != 5;
    }
}
