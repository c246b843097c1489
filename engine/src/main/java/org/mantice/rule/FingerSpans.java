package org.mantice.rule;

/**
 * How far apart two fingers of the right hand may play, in semitones from the lower finger's key to the higher
 * finger's; negative where the thumb has passed under.
 *
 * <p>Source of the table: Parncutt, Sloboda, Clarke, Raekallio and Desain, "An Ergonomic Model of Keyboard Fingering
 * for Melodic Fragments", Music Perception 14(4), 1997 (from memory, one cell less certain: 1-5 largest relaxed, 10).
 * It holds for an adult's hand on piano keys (octave 165.1 mm).
 */
public final class FingerSpans {
    /**
     * One row of the published table.
     *
     * @param minPractical smallest that can be played at all; not above the next
     */
    public record Row(
            int minPractical,
            int minComfortable,
            int minRelaxed,
            int maxRelaxed,
            int maxComfortable,
            int maxPractical) {}

    /**
     * The span, in tenths of a key, at which the published limits hold: largest comfortable span of thumb and little
     * finger, 13 semitones, is 13 × 7/12 white keys from middle to middle, one more from edge to edge.
     */
    public static final int PUBLISHED_HAND_TENTHS = 86;

    private static final Row[][] ROWS = new Row[6][6];

    static {
        ROWS[1][2] = new Row(-5, -3, 1, 5, 8, 10);
        ROWS[1][3] = new Row(-4, -2, 3, 7, 10, 12);
        ROWS[1][4] = new Row(-3, -1, 5, 9, 12, 14);
        ROWS[1][5] = new Row(-1, 1, 7, 10, 13, 15);
        ROWS[2][3] = new Row(1, 1, 1, 2, 3, 5);
        ROWS[2][4] = new Row(1, 1, 3, 4, 5, 7);
        ROWS[2][5] = new Row(2, 2, 5, 6, 8, 10);
        ROWS[3][4] = new Row(1, 1, 1, 2, 2, 4);
        ROWS[3][5] = new Row(1, 1, 3, 4, 5, 7);
        ROWS[4][5] = new Row(1, 1, 1, 2, 3, 5);
    }

    private FingerSpans() {}

    /**
     * The published row.
     *
     * @param lower 1 to 4
     * @param higher above {@code lower}, up to 5
     */
    public static Row published(int lower, int higher) {
        if (lower < 1 || higher > 5 || lower >= higher)
            throw new IllegalArgumentException(
                    "fingers are " + lower + " and " + higher + "; allowed: 1 to 5, the first below the second");
        return ROWS[lower][higher];
    }

    /**
     * A published upper limit for a hand, in thousandths of a semitone. The span is measured on the player's own keys,
     * so the width of the keys is already in it: a hand that spans 98 tenths of narrow keys opens by (98 - 10) / (86 -
     * 10) times as many semitones as the table says. Lower limits are not scaled: one finger to one key is at rest on
     * every keyboard.
     *
     * @param semitones of the table
     * @param handSpanTenths comfortable span in tenths of a white key, 50 to 140
     */
    public static int milliSemitones(int semitones, int handSpanTenths) {
        return semitones * 1_000 * (handSpanTenths - 10) / (PUBLISHED_HAND_TENTHS - 10);
    }

    /**
     * How many semitones the thumb may pass under a finger or a finger over the thumb in legato: 5 for the second and
     * third finger, 4 for the fourth, none for the fifth. Wider than the published table, since handbook arpeggios need
     * it (estimate).
     */
    public static int crossingLimit(int finger) {
        return switch (finger) {
            case 2, 3 -> 5;
            case 4 -> 4;
            default -> 0;
        };
    }

    /** Whether the two keys can be joined in legato, or struck together, by two different fingers. */
    public static boolean practical(int lower, int higher, int span, int handSpanTenths) {
        Row row = published(lower, higher);
        if (span <= 0) return lower == 1 && -span <= crossingLimit(higher) && span != 0;
        return span >= Math.max(1, row.minPractical())
                && span * 1_000 <= milliSemitones(row.maxPractical(), handSpanTenths);
    }
}
