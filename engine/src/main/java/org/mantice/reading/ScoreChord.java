package org.mantice.reading;

import java.util.List;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;

/**
 * A chord symbol at its place.
 *
 * @param placed whether an offset of its own moved it
 */
record ScoreChord(MusicalTime onset, boolean placed, ChordSymbol symbol, List<Finding> findings) {
    ScoreChord at(MusicalTime other) {
        return new ScoreChord(other, placed, symbol, findings);
    }
}
