package org.mantice.tune;

/** The mode of a key; {@link #NONE} where the source names none. */
public enum Mode {
    MAJOR,
    MINOR,
    DORIAN,
    PHRYGIAN,
    LYDIAN,
    MIXOLYDIAN,
    AEOLIAN,
    IONIAN,
    LOCRIAN,
    NONE
}
