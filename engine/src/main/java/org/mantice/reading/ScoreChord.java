package org.mantice.reading;

import java.util.List;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;

/**
 * A chord symbol at its place.
 *
 * @param placed whether an offset of its own moved it
 */
record ScoreChord(MusicalTime onset, boolean placed, ChordSymbol symbol, Manner manner, List<Finding> findings) {
    /**
     * How a symbol is meant.
     *
     * @param alternate in place of the one before it at its place, on a later pass
     * @param optional may be left out
     * @param proposed the file says that nobody wrote it
     */
    record Manner(boolean alternate, boolean optional, boolean proposed) {
        static final Manner PLAIN = new Manner(false, false, false);
        static final Manner ALTERNATE = new Manner(true, false, false);
        static final Manner OPTIONAL = new Manner(false, true, false);
    }

    /** A symbol that somebody wrote, to be played every time. */
    ScoreChord(MusicalTime onset, boolean placed, ChordSymbol symbol, List<Finding> findings) {
        this(onset, placed, symbol, Manner.PLAIN, findings);
    }

    ScoreChord at(MusicalTime other) {
        return new ScoreChord(other, placed, symbol, manner, findings);
    }
}
