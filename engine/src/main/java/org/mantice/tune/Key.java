package org.mantice.tune;

/**
 * A key signature.
 *
 * @param fifths sharps (positive) or flats (negative), -7 to 7
 */
public record Key(int fifths, Mode mode) {
    public static final Key C_MAJOR = new Key(0, Mode.MAJOR);

    public Key {
        if (fifths < -7 || fifths > 7) throw new IllegalArgumentException("fifths is " + fifths + "; allowed: -7 to 7");
    }

    /** The key note: A for no sharps and minor. */
    public NoteName tonic() {
        return NoteName.ofFifths(fifths
                + switch (mode) {
                    case MINOR, AEOLIAN -> 3;
                    case DORIAN -> 2;
                    case PHRYGIAN -> 4;
                    case LYDIAN -> -1;
                    case MIXOLYDIAN -> 1;
                    case LOCRIAN -> 5;
                    case MAJOR, IONIAN, NONE -> 0;
                });
    }
}
