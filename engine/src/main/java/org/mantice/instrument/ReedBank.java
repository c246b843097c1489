package org.mantice.instrument;

/** A bank of treble reeds: 16' sounds an octave below the 8', 4' an octave above. */
public enum ReedBank {
    LOW_16(-12),
    MIDDLE_8(0),
    TREMOLO_LOWER_8(0),
    TREMOLO_UPPER_8(0),
    HIGH_4(12);

    private final int semitones;

    ReedBank(int semitones) {
        this.semitones = semitones;
    }

    /** Sounding pitch against the key, in semitones. */
    public int semitones() {
        return semitones;
    }
}
