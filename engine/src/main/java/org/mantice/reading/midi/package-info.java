/**
 * Standard MIDI Files: bytes to notes in ticks, ticks to beats and exact note lengths, and what the notes tell about
 * melody, key and chords. Start at {@link org.mantice.reading.midi.MidiFile}, then {@code Bars} (meters to bars and
 * beats), {@code Quantizer} (ticks to exact places), {@code ChordFinder} and {@code KeyFinder}. Depends on {@code
 * org.mantice.tune} and the JDK alone, not even on the JDK's own MIDI classes; used by {@code org.mantice.reading} only.
 */
package org.mantice.reading.midi;
