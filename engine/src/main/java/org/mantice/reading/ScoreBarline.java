package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.MusicalTime;

/**
 * A barline element.
 *
 * @param onset where it stands in the measure
 * @param repeat "forward", "backward" or empty
 * @param afterJump the repeat is also taken after a jump, which the file has not denied
 * @param times how often the passage is played in all, as written; may be empty
 */
record ScoreBarline(
        MusicalTime onset,
        Location location,
        String style,
        String repeat,
        String times,
        boolean afterJump,
        Optional<ScoreEnding> ending,
        boolean segno,
        boolean coda,
        boolean fermata,
        List<Finding> findings) {
    enum Location {
        LEFT,
        MIDDLE,
        RIGHT
    }

    ScoreBarline at(Location other, MusicalTime newOnset) {
        return new ScoreBarline(
                newOnset, other, style, repeat, times, afterJump, ending, segno, coda, fermata, findings);
    }

    /** The same without its repeat and ending. */
    ScoreBarline withoutOrder() {
        return new ScoreBarline(
                onset, location, style, "", "", afterJump, Optional.empty(), segno, coda, fermata, findings);
    }

    /**
     * The start or end of a numbered ending.
     *
     * @param numbers as written
     * @param text printed instead of the numbers; may be empty
     */
    record ScoreEnding(boolean start, String numbers, String text) {}
}
