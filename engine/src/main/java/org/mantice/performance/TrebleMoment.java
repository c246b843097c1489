package org.mantice.performance;

import java.util.List;
import java.util.Set;
import org.mantice.tune.Articulation;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * A moment at which the right hand strikes one or more keys. Ties are joined: a tied note is one moment, unless another
 * note is struck while it is held.
 *
 * @param index in order of play, from 0
 * @param measure index of the played measure
 * @param place where it is written
 * @param graceIndex 0 for an ordinary moment; 1, 2, … for grace notes before the event at the place, -1, -2, … for
 *     grace notes after it
 * @param onset from the start of the performance
 * @param duration nominal, ties joined
 * @param onsetMicros from the start of the performance
 * @param releaseMicros when the keys are let go; never after the next moment's onset unless held there
 * @param notes ascending by pitch, one or more
 * @param slurredToNext a slur joins it to the next moment
 * @param breathAfter a breath mark, caesura or fermata follows
 * @param endsSlur a slur ends here
 * @param startsPhrase an explicit phrase mark or the end of a double bar says that a phrase begins here
 * @param punctuation of the words after the note; of a melisma, after its last note
 * @param loudness hundredths of a step from ppp (0) over mf (400) to fff (700)
 */
public record TrebleMoment(
        int index,
        int measure,
        WrittenPlace place,
        int graceIndex,
        MusicalTime onset,
        MusicalTime duration,
        long onsetMicros,
        long releaseMicros,
        List<PlayedNote> notes,
        Set<Articulation> articulations,
        boolean slurredToNext,
        boolean breathAfter,
        boolean endsSlur,
        boolean startsPhrase,
        Punctuation punctuation,
        int loudness) {
    public TrebleMoment {
        notes = List.copyOf(notes);
        if (notes.isEmpty()) throw new IllegalArgumentException("notes is empty; allowed: one or more");
    }

    public int lowestMidi() {
        return notes.get(0).midi();
    }

    public int highestMidi() {
        return notes.get(notes.size() - 1).midi();
    }
}
