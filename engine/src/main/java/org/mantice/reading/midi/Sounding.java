package org.mantice.reading.midi;

/**
 * A note at its place in writing, in {@link Grid#FINE} steps.
 *
 * @param pitch MIDI number
 */
record Sounding(int pitch, long start, long end) {}
