package org.mantice.reading;

import java.util.List;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;

/**
 * A chord symbol at its place.
 *
 * @param placed whether an offset of its own moved it
 * @param proposed the file says that nobody wrote it
 */
record ScoreChord(MusicalTime onset, boolean placed, ChordSymbol symbol, boolean proposed, List<Finding> findings) {
    /** A symbol that somebody wrote. */
    ScoreChord(MusicalTime onset, boolean placed, ChordSymbol symbol, List<Finding> findings) {
        this(onset, placed, symbol, false, findings);
    }

    ScoreChord at(MusicalTime other) {
        return new ScoreChord(other, placed, symbol, proposed, findings);
    }
}
