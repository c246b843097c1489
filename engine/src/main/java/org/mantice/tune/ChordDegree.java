package org.mantice.tune;

/**
 * A tone added to, altered in or taken from a chord kind.
 *
 * @param value scale degree above the root, 1 to 13
 * @param alter semitones, -2 to 2, against the degree of a major scale with a minor seventh for ADD and SUBTRACT,
 *     against the tone in the chord for ALTER (MusicXML 4.0, element degree-alter)
 */
public record ChordDegree(int value, int alter, Change change) {
    /** What is done with the tone. */
    public enum Change {
        ADD,
        ALTER,
        SUBTRACT
    }

    public ChordDegree {
        if (value < 1 || value > 13) throw new IllegalArgumentException("degree is " + value + "; allowed: 1 to 13");
        if (alter < -2 || alter > 2) throw new IllegalArgumentException("alter is " + alter + "; allowed: -2 to 2");
    }
}
