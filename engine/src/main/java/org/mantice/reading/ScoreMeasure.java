package org.mantice.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * A measure of one part.
 *
 * @param implicit the file says that it does not count
 * @param key at its start, sounding
 * @param meter at its start; empty before the first time signature
 * @param end where the last note, rest or forward of any voice ends; rests that mean the whole measure do not count
 * @param clefs signs of the clefs that the staves so far began with
 * @param repeated how many measures back a measure repeat sign points; 0 for none
 * @param findings about the measure as a whole
 */
record ScoreMeasure(
        int index,
        String number,
        boolean implicit,
        Key key,
        Optional<Meter> meter,
        MusicalTime end,
        List<ScoreNote> notes,
        List<ScoreChord> chords,
        List<ScoreSign> signs,
        List<ScoreBarline> barlines,
        Map<Integer, String> clefs,
        int repeated,
        List<Finding> findings) {
    /** The same measure with nothing in it. */
    ScoreMeasure withoutContents() {
        return new ScoreMeasure(
                index, number, implicit, key, meter, end, List.of(), List.of(), List.of(), List.of(), clefs, 0,
                List.of());
    }

    /** The same measure at another place, with other barlines. */
    ScoreMeasure at(int otherIndex, List<ScoreBarline> otherBarlines) {
        return new ScoreMeasure(
                otherIndex,
                number,
                implicit,
                key,
                meter,
                end,
                notes,
                chords,
                signs,
                otherBarlines,
                clefs,
                repeated,
                findings);
    }
}
