package org.mantice.tune;

/** The letter that names a chord button in a written bass staff: M, m, 7, d. */
public enum BassChordType {
    MAJOR("M"),
    MINOR("m"),
    SEVENTH("7"),
    DIMINISHED("d");

    private final String letter;

    BassChordType(String letter) {
        this.letter = letter;
    }

    public String letter() {
        return letter;
    }
}
