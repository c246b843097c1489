package org.mantice.harmony;

/** What a melody note is beside a chord. */
enum ToneUse {
    ROOT,
    THIRD,
    FIFTH,
    SEVENTH,
    /** A note of the key, not of the chord, reached and left by step. */
    BY_STEP,
    /** A note of the key, not of the chord, reached or left by leap. */
    BY_LEAP,
    /** In neither. */
    FOREIGN;

    static ToneUse of(int noteOfChord, boolean inKey, boolean byStep) {
        if (noteOfChord >= 0) return values()[noteOfChord];
        if (!inKey) return FOREIGN;
        return byStep ? BY_STEP : BY_LEAP;
    }
}
