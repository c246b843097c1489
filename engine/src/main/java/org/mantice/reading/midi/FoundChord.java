package org.mantice.reading.midi;

import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;

/**
 * A chord recognised from notes.
 *
 * @param place from the beginning of the file
 */
public record FoundChord(MusicalTime place, ChordSymbol symbol) {}
