package org.mantice.tune;

import java.util.Optional;

/**
 * A chord symbol at its place in a measure; it holds until the next one.
 *
 * @param alternate the chord written beside it, which takes its place on a later pass
 * @param optional written in brackets: it may be left out, and then the chord before it goes on
 * @param proposed nobody wrote it: it was worked out from the melody and waits for somebody's word
 */
public record PlacedChord(
        MusicalTime offset, ChordSymbol symbol, Optional<ChordSymbol> alternate, boolean optional, boolean proposed) {
    /** A chord that somebody wrote, to be played every time. */
    public PlacedChord(MusicalTime offset, ChordSymbol symbol) {
        this(offset, symbol, false);
    }

    /** A chord to be played every time. */
    public PlacedChord(MusicalTime offset, ChordSymbol symbol, boolean proposed) {
        this(offset, symbol, Optional.empty(), false, proposed);
    }

    /** The same with a chord beside it for later passes, in place of the one it had. */
    public PlacedChord withAlternate(ChordSymbol other) {
        return new PlacedChord(offset, symbol, Optional.of(other), optional, proposed);
    }
}
