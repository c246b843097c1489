package org.mantice.tune;

/** A note letter. */
public enum Step {
    C(0),
    D(2),
    E(4),
    F(5),
    G(7),
    A(9),
    B(11);

    private final int semitone;

    Step(int semitone) {
        this.semitone = semitone;
    }

    /** Semitones above C, 0 to 11. */
    public int semitone() {
        return semitone;
    }
}
