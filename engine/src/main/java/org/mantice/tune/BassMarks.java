package org.mantice.tune;

import java.util.OptionalInt;

/**
 * What is written at an event of a bass staff for the hand alone.
 *
 * @param counterbass the note is underlined: it is meant on the counterbass row (New International Manual of Braille
 *     Music Notation, accordion chapter: row 1 has a dash under the note, row 2 no mark)
 * @param finger 1 to 5; empty where none is written
 */
public record BassMarks(boolean counterbass, OptionalInt finger) {
    public static final BassMarks NONE = new BassMarks(false, OptionalInt.empty());

    public BassMarks {
        if (finger.isPresent() && (finger.getAsInt() < 1 || finger.getAsInt() > 5))
            throw new IllegalArgumentException("finger is " + finger.getAsInt() + "; allowed: 1 to 5");
    }
}
