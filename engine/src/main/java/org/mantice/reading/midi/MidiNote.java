package org.mantice.reading.midi;

import java.util.Comparator;

/**
 * A note of a file.
 *
 * @param channel 1 to 16
 * @param pitch MIDI number, 0 to 127
 * @param start in ticks from the beginning
 * @param end in ticks, not before the start
 */
public record MidiNote(int channel, int pitch, long start, long end) {
    /** The channel that General MIDI gives to drums. */
    public static final int DRUM_CHANNEL = 10;

    /** By start, then upwards. */
    public static final Comparator<MidiNote> ORDER = Comparator.comparingLong(MidiNote::start)
            .thenComparingInt(MidiNote::pitch)
            .thenComparingLong(MidiNote::end);

    public boolean isDrum() {
        return channel == DRUM_CHANNEL;
    }
}
