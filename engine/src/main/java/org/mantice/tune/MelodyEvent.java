package org.mantice.tune;

import java.util.List;

/**
 * A note, chord or rest of the melody. Events of a measure follow each other without overlap; time that none covers is
 * silent.
 *
 * @param offset from the start of the measure
 * @param duration above 0
 * @param notes ascending by pitch; empty for a rest
 * @param graces grace notes before the event; they take their time from it
 * @param after grace notes played at the end of the event; they take their time from it too
 */
public record MelodyEvent(
        MusicalTime offset,
        MusicalTime duration,
        List<MelodyNote> notes,
        GraceGroup graces,
        GraceGroup after,
        EventMarks marks) {
    public MelodyEvent {
        if (offset.numerator() < 0) throw new IllegalArgumentException("offset is " + offset + "; allowed: 0 or more");
        if (!duration.isPositive())
            throw new IllegalArgumentException("duration is " + duration + "; allowed: above 0");
        notes = notes.stream().sorted((a, b) -> a.pitch().compareTo(b.pitch())).toList();
    }

    public static MelodyEvent note(MusicalTime offset, MusicalTime duration, Pitch pitch) {
        return new MelodyEvent(
                offset, duration, List.of(MelodyNote.of(pitch)), GraceGroup.NONE, GraceGroup.NONE, EventMarks.NONE);
    }

    public boolean isRest() {
        return notes.isEmpty();
    }

    public MusicalTime end() {
        return offset.plus(duration);
    }
}
