package org.mantice.reading.midi;

/** What a file says beside its notes, each at its tick. */
public sealed interface MidiMeta {
    long tick();

    /** A tempo from here on. @param microsPerQuarter 1 to 16,777,215 */
    record Tempo(long tick, int microsPerQuarter) implements MidiMeta {}

    /** A time signature from here on. @param unit a power of two from 1 to 64 */
    record TimeSignature(long tick, int beats, int unit) implements MidiMeta {}

    /** A key signature from here on. @param fifths -7 to 7 */
    record KeySignature(long tick, int fifths, boolean minor) implements MidiMeta {}

    /** A syllable, with the blanks and signs that divide words and lines. @param plain written as text, not as lyric */
    record Syllable(long tick, String text, boolean plain) implements MidiMeta {}
}
