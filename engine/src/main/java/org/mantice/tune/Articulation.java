package org.mantice.tune;

/** Touch marks on a note; names as in MusicXML 4.0, element articulations. */
public enum Articulation {
    STACCATO,
    STACCATISSIMO,
    SPICCATO,
    TENUTO,
    DETACHED_LEGATO,
    ACCENT,
    STRONG_ACCENT,
    STRESS,
    UNSTRESS,
    SOFT_ACCENT
}
