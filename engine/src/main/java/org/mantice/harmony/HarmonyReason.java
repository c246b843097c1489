package org.mantice.harmony;

/** What speaks for or against a chord. */
public enum HarmonyReason {
    /** The chord itself is common or rare in this kind of key. */
    KIND_OF_CHORD,
    /** The tune, or what follows a change of key, begins with it. */
    BEGINNING,
    /** Notes sounding with it belong to it, pass by step, leap outside it, or are foreign to the key. */
    MELODY,
    /** Leaps of the melody stay within it or do not. */
    LEAPS,
    /** The lowest note beside it is its root, another of its notes, or neither. */
    LOWEST_NOTE,
    /** The other notes of the measure, and of its half, belong to it or do not. */
    REST_OF_MEASURE,
    /** The notes of the beats beside, of the measures beside and of the whole tune go with it or do not. */
    NOTES_AROUND,
    /** It follows the chord before. */
    PROGRESSION,
    /** A chord changes at this place of the measure. */
    CHANGE,
    /** It stands at the beginning or end of a strain, of four measures or of the tune. */
    CADENCE,
    /** It stands in this measure of an eight-measure strain. */
    STRAIN,
    /** The same passage had another chord before. */
    ALIKE
}
