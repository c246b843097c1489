package org.mantice.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.tune.Loudness;

/**
 * Bellows worked out from size by physics and guesses, for an instrument that nobody has timed yet. No litres per
 * minute of a reed and no bellows area have been published: every number here is an estimate, good to a factor of two
 * or three, to be replaced by a stopwatch.
 *
 * @param squareMetres effective area; estimates for instruments lie between 0.04 (beginner) and 0.09 (concert);
 *     0.01 to 0.2
 * @param comfortableMm comfortable opening at the top edge, 1 to the full opening
 * @param fullMm full opening at the top edge, 10 to 1,000
 */
public record BellowsEstimate(double squareMetres, int comfortableMm, int fullMm) {
    /** Pressure at mf in pascals. */
    public static final double MF_PASCALS = 500;

    /** Open area of a treble reed of the 8' bank, the mean over the keyboard, in square millimetres. */
    public static final double REED_8_SQUARE_MM = 10;

    private static final double REED_16_SQUARE_MM = 16;
    private static final double REED_4_SQUARE_MM = 6;
    /** Mean over the reeds of a bass button, which span several octaves. */
    private static final double BASS_REED_SQUARE_MM = 18;

    private static final double CHORD_REED_SQUARE_MM = 10;
    private static final int TABLE_STEPS = 8;

    public BellowsEstimate {
        if (!(squareMetres >= 0.01 && squareMetres <= 0.2))
            throw new IllegalArgumentException("squareMetres is " + squareMetres + "; allowed: 0.01 to 0.2");
        if (fullMm < 10 || fullMm > 1_000)
            throw new IllegalArgumentException("fullMm is " + fullMm + "; allowed: 10 to 1000");
        if (comfortableMm < 1 || comfortableMm > fullMm)
            throw new IllegalArgumentException("comfortableMm is " + comfortableMm + "; allowed: 1 to " + fullMm);
    }

    /**
     * @param bassReeds reeds that a bass button opens
     * @param chordReeds reeds that a chord button opens
     * @param turnMillis what a turn takes, 30 to 80 on most instruments
     */
    public Bellows bellows(int bassReeds, int chordReeds, int turnMillis) {
        return new Bellows(
                volumes(),
                comfortableMm,
                fullMm,
                ReedFlow.whole(ReedFlow.seconds(litresAt(comfortableMm), flow(Loudness.MF, REED_8_SQUARE_MM))),
                appetites(bassReeds, chordReeds),
                turnMillis,
                false);
    }

    /**
     * Litres at an opening. The fans open as a wedge: the top edge leads, and the bottom edge follows by the square of
     * the opening, half as far as the top when fully open. So the last centimetres hold more air than the first.
     */
    public double litresAt(double openingMm) {
        double bottomMm = openingMm * openingMm / (2 * fullMm);
        return squareMetres * (openingMm + bottomMm) / 2;
    }

    private List<Bellows.OpeningVolume> volumes() {
        List<Bellows.OpeningVolume> rows = new ArrayList<>();
        for (int step = 0; step <= TABLE_STEPS; step++) {
            int openingMm = fullMm * step / TABLE_STEPS;
            rows.add(new Bellows.OpeningVolume(openingMm, ReedFlow.whole(1_000 * litresAt(openingMm))));
        }
        return rows;
    }

    /**
     * Pressure for a loudness in pascals. An estimate: 200 is a soft, 500 a middling, 1,000 a loud, 1,500 a very loud
     * tone; the rest lies between.
     */
    public static double pascals(Loudness loudness) {
        return switch (loudness) {
            case PPP -> 150;
            case PP -> 200;
            case P -> 300;
            case MP -> 400;
            case MF -> MF_PASCALS;
            case F -> 1_000;
            case FF -> 1_500;
            case FFF -> 2_000;
        };
    }

    private static double flow(Loudness loudness, double squareMm) {
        return ReedFlow.litresPerSecond(pascals(loudness), squareMm);
    }

    /** What bass and chord buttons, banks and loudness take against one 8' reed at mf. */
    public static Bellows.Appetites appetites(int bassReeds, int chordReeds) {
        double one = flow(Loudness.MF, REED_8_SQUARE_MM);
        SortedMap<ReedBank, Integer> banks = new TreeMap<>();
        for (ReedBank bank : ReedBank.values())
            banks.put(bank, ReedFlow.perMille(flow(Loudness.MF, squareMm(bank)), one));
        SortedMap<Loudness, Integer> loudness = new TreeMap<>();
        for (Loudness level : Loudness.values())
            loudness.put(level, ReedFlow.perMille(flow(level, REED_8_SQUARE_MM), one));
        return new Bellows.Appetites(
                banks,
                ReedFlow.perMille(bassReeds * flow(Loudness.MF, BASS_REED_SQUARE_MM), one),
                ReedFlow.perMille(chordReeds * flow(Loudness.MF, CHORD_REED_SQUARE_MM), one),
                loudness);
    }

    private static double squareMm(ReedBank bank) {
        return switch (bank) {
            case LOW_16 -> REED_16_SQUARE_MM;
            case MIDDLE_8, TREMOLO_LOWER_8, TREMOLO_UPPER_8 -> REED_8_SQUARE_MM;
            case HIGH_4 -> REED_4_SQUARE_MM;
        };
    }
}
