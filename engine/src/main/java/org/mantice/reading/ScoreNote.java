package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;

/**
 * A note or rest as MusicXML has it: one pitch, in a voice and on a staff.
 *
 * @param duration zero for grace notes
 * @param run counts the times that the measure was backed up before it
 * @param pitch sounding; empty for rests and notes without pitch
 * @param findings about this note
 */
record ScoreNote(
        MusicalTime onset,
        MusicalTime duration,
        int run,
        String voice,
        int staff,
        Kind kind,
        boolean inChord,
        boolean cue,
        Optional<Pitch> pitch,
        boolean tieStart,
        boolean tieStop,
        List<Integer> fingers,
        NoteMarks marks,
        List<Finding> findings) {
    enum Kind {
        NOTE,
        GRACE,
        /** A grace note that takes its time from the note before. */
        GRACE_AFTER,
        REST,
        /** A rest for the whole measure, whatever its duration says. */
        MEASURE_REST,
        UNPITCHED
    }

    boolean isGrace() {
        return kind == Kind.GRACE || kind == Kind.GRACE_AFTER;
    }

    boolean isRest() {
        return kind == Kind.REST || kind == Kind.MEASURE_REST;
    }

    /** A pitched note that counts as music, grace notes included. */
    boolean isMelodic() {
        return pitch.isPresent() && !cue;
    }

    /** A stretch of the note, tied to the rest of it; what is written at the note stays with its beginning. */
    ScoreNote part(MusicalTime newOnset, MusicalTime newDuration, boolean heldInto, boolean goesOn) {
        return new ScoreNote(
                newOnset,
                newDuration,
                run,
                voice,
                staff,
                kind,
                inChord,
                cue,
                pitch,
                tieStart || goesOn,
                tieStop || heldInto,
                heldInto ? List.of() : fingers,
                heldInto ? NoteMarks.NONE : marks,
                heldInto ? List.of() : findings);
    }

    MusicalTime end() {
        return onset.plus(duration);
    }
}
