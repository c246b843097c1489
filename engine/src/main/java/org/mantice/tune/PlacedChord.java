package org.mantice.tune;

/**
 * A chord symbol at its place in a measure; it holds until the next one.
 *
 * @param proposed nobody wrote it: it was worked out from the melody and waits for somebody's word
 */
public record PlacedChord(MusicalTime offset, ChordSymbol symbol, boolean proposed) {
    /** A chord that somebody wrote. */
    public PlacedChord(MusicalTime offset, ChordSymbol symbol) {
        this(offset, symbol, false);
    }
}
