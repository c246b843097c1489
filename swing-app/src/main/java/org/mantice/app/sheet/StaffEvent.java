package org.mantice.app.sheet;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;

/**
 * A note, chord or rest as one sign of the staff. Its x is the middle of an ordinary notehead; distances are in staff
 * spaces from there.
 *
 * @param tuplet how many are played in the time of the next smaller power of two; 1 where it is no tuplet
 * @param heads from low to high; empty for a rest
 * @param wholeMeasure a rest that fills its measure
 * @param source the event of the melody; empty for silence that the source does not write
 * @param first the first sign of its event
 * @param last the last sign of its event
 * @param left how far its signs reach to the left, 0 or more
 * @param right how far its signs reach to the right, 0 or more
 */
record StaffEvent(
        MusicalTime offset,
        MusicalTime length,
        NoteValue value,
        int tuplet,
        List<Head> heads,
        boolean stemUp,
        boolean wholeMeasure,
        Optional<MelodyEvent> source,
        boolean first,
        boolean last,
        List<Grace> graces,
        List<Grace> after,
        double left,
        double right) {

    /**
     * A notehead.
     *
     * @param place line or space in steps from the bottom line
     * @param displaced on the other side of the stem, for the second in a chord
     * @param accidental to be written before it
     * @param accidentalX of the left edge of the accidental
     * @param tiedBack a tie comes to it
     * @param tiedForward a tie goes from it
     */
    record Head(
            int place,
            boolean displaced,
            Optional<Glyph> accidental,
            double accidentalX,
            boolean tiedBack,
            boolean tiedForward) {}

    /**
     * A grace note or chord.
     *
     * @param x of the middle of its heads from that of the main note
     */
    record Grace(List<Head> heads, double x) {}

    boolean isRest() {
        return heads.isEmpty();
    }

    int lowest() {
        return heads.get(0).place();
    }

    int highest() {
        return heads.get(heads.size() - 1).place();
    }

    boolean isBeamable() {
        return !isRest() && value.flags() > 0;
    }

    MusicalTime end() {
        return offset.plus(length);
    }
}
