package org.mantice.reading.midi;

/** A file holds nothing that can be read as MIDI. */
public final class MidiRefusal extends Exception {
    /** Why. */
    public enum Why {
        /** The file ends before its first track. */
        TRUNCATED,
        /** The value is a format other than 0 and 1. */
        FORMAT,
        /** Time is counted in film frames or not at all. */
        FRAMES,
        /** More tracks than the value. */
        TRACKS,
        /** More notes and signs than the value. */
        EVENTS
    }

    private final Why why;
    private final int value;

    MidiRefusal(Why why, int value) {
        super(why + " " + value);
        this.why = why;
        this.value = value;
    }

    public Why why() {
        return why;
    }

    /** What the reason speaks of; 0 where it speaks of nothing. */
    public int value() {
        return value;
    }
}
