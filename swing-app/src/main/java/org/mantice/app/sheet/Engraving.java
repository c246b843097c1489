package org.mantice.app.sheet;

/**
 * Sizes in staff spaces. Where nothing else is said they are Bravura's own (metadata of version 1.392,
 * engravingDefaults, glyphBBoxes and glyphsWithAnchors).
 */
final class Engraving {
    static final double STAFF_LINE = 0.13;
    static final double STEM = 0.12;
    static final double BEAM = 0.5;
    static final double BEAM_GAP = 0.25;
    static final double LEGER_LINE = 0.16;
    /** Bravura's 0.4 would join the leger lines of notes as near as ours may be. */
    static final double LEGER_EXTENSION = 0.35;

    static final double CURVE_END = 0.1;
    static final double CURVE_MIDDLE = 0.22;
    static final double THIN_BAR = 0.16;
    static final double THICK_BAR = 0.5;
    static final double BAR_GAP = 0.4;
    static final double REPEAT_DOT_GAP = 0.16;
    static final double REPEAT_DOT = 0.4;
    static final double BRACKET = 0.16;
    static final double HAIRPIN = 0.16;
    /** Width of noteheadBlack and noteheadHalf. */
    static final double HEAD = 1.18;

    /** stemUpSE of noteheadBlack and noteheadHalf; stemDownNW lies as far below. */
    static final double STEM_ANCHOR = 0.168;

    /** From the middle of an ordinary notehead to its edge. */
    static final double HALF_HEAD = HEAD / 2;

    /** Grace notes beside ordinary ones. Common practice: between 0.6 and 0.7. */
    static final double GRACE = 0.65;

    /** Sizes of texts, our choice: chord symbols must be read at playing distance. */
    static final double CHORD_SIZE = 2.15;

    static final double ALTERNATE_CHORD_SIZE = 1.6;
    static final double ALTERNATE_CHORD_GAP = 0.1;

    static final double LYRIC_SIZE = 1.9;
    static final double WORDS_SIZE = 1.8;
    static final double SMALL_SIZE = 1.5;

    /**
     * Least distance of the middles of two notes: fingers must be told apart, and pointed at. Our choice: 16 pixels at the
     * usual size.
     */
    static final double FINGER_PITCH = 2;

    /** Least distance of two beats where buttons are named at them. Our choice. */
    static final double BUTTON_PITCH = 2.8;

    private Engraving() {}
}
