package org.mantice.tune;

import java.util.Comparator;
import java.util.List;

/**
 * A written measure.
 *
 * @param number as printed, for people; not unique
 * @param length as notated, which a pickup makes shorter than the meter's
 * @param pickup does not count as a full measure: a pickup or the second half of a split measure
 */
public record Measure(
        String number,
        MusicalTime length,
        Meter meter,
        Key key,
        boolean pickup,
        List<MelodyEvent> melody,
        List<PlacedChord> chords,
        List<BassEvent> bass,
        List<Mark> marks,
        Barlines barlines) {
    public Measure {
        melody = melody.stream()
                .sorted(Comparator.comparing(MelodyEvent::offset))
                .toList();
        chords = chords.stream()
                .sorted(Comparator.comparing(PlacedChord::offset))
                .toList();
        bass = bass.stream().sorted(Comparator.comparing(BassEvent::offset)).toList();
        marks = marks.stream().sorted(Comparator.comparing(Mark::offset)).toList();
        if (!length.isPositive()) throw new IllegalArgumentException("length is " + length + "; allowed: above 0");
        MusicalTime end = MusicalTime.ZERO;
        for (MelodyEvent event : melody) {
            if (event.offset().isBefore(end))
                throw new IllegalArgumentException(
                        "measure " + number + ": melody events overlap at " + event.offset());
            end = event.end();
        }
        if (length.isBefore(end))
            throw new IllegalArgumentException(
                    "measure " + number + ": length is " + length + ", but the melody ends at " + end);
    }

    /** The same with other notes. */
    public Measure withMelody(List<MelodyEvent> others) {
        return new Measure(number, length, meter, key, pickup, others, chords, bass, marks, barlines);
    }

    /** The same with other chord symbols. */
    public Measure withChords(List<PlacedChord> others) {
        return new Measure(number, length, meter, key, pickup, melody, others, bass, marks, barlines);
    }

    /** The same with another bass staff. */
    public Measure withBass(List<BassEvent> others) {
        return new Measure(number, length, meter, key, pickup, melody, chords, others, marks, barlines);
    }

    /** The same with other marks. */
    public Measure withMarks(List<Mark> others) {
        return new Measure(number, length, meter, key, pickup, melody, chords, bass, others, barlines);
    }

    /** The same with other barlines. */
    public Measure withBarlines(Barlines others) {
        return new Measure(number, length, meter, key, pickup, melody, chords, bass, marks, others);
    }

    /** The same with another key signature; notes and chords keep their pitches. */
    public Measure withKey(Key other) {
        return new Measure(number, length, meter, other, pickup, melody, chords, bass, marks, barlines);
    }

    public boolean hasNotes() {
        return melody.stream().anyMatch(event -> !event.isRest());
    }
}
