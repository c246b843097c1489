package org.mantice.tune;

/**
 * A note without an octave, as a chord root or bass is written.
 *
 * @param alter semitones added to the letter, -2 to 2
 */
public record NoteName(Step step, int alter) {
    private static final Step[] FIFTHS = {Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B};

    public NoteName {
        if (alter < -2 || alter > 2) throw new IllegalArgumentException("alter is " + alter + "; allowed: -2 to 2");
    }

    /** 0 (C) to 11 (B). */
    public int pitchClass() {
        return Math.floorMod(step.semitone() + alter, 12);
    }

    /** Place on the line of fifths: F -1, C 0, G 1, B-flat -2. */
    public int fifths() {
        for (int i = 0; i < FIFTHS.length; i++) if (FIFTHS[i] == step) return i - 1 + 7 * alter;
        throw new IllegalStateException("no such step " + step);
    }

    /**
     * The note at a place on the line of fifths, respelled by twelve fifths where it would need more than a double
     * sharp or flat.
     */
    public static NoteName ofFifths(int fifths) {
        int place = fifths;
        while (place > 19) place -= 12;
        while (place < -15) place += 12;
        return new NoteName(FIFTHS[Math.floorMod(place + 1, 7)], Math.floorDiv(place + 1, 7));
    }

    /** As {@code "Eb"} or {@code "F#"}. */
    @Override
    public String toString() {
        return step.name()
                + switch (alter) {
                    case -2 -> "bb";
                    case -1 -> "b";
                    case 1 -> "#";
                    case 2 -> "##";
                    default -> "";
                };
    }
}
