package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * What the left hand does in one measure, one letter a step: {@code B} bass, {@code C} chord, {@code H} both together,
 * {@code -} nothing new.
 *
 * @param meter the meter it is for
 * @param step length of a letter
 * @param beats the ordinary pattern
 * @param fewer the pattern where a step is shorter than {@link #SHORTEST_STEP_MILLIS}
 */
public record Pattern(Meter meter, MusicalTime step, String beats, String fewer) {
    /** Below this a hand does not strike on every step; estimate. */
    public static final int SHORTEST_STEP_MILLIS = 170;

    /** Common practice, no source: 3/4 bass-chord-chord, duple meters bass and chord in turn, 6/8 in two. */
    private static final List<Pattern> TABLE = List.of(
            row(2, 4, 1, 8, "BCBC", "B-C-"),
            row(3, 4, 1, 4, "BCC", "H--"),
            row(4, 4, 1, 4, "BCBC", "B-C-"),
            row(2, 2, 1, 4, "BCBC", "B-C-"),
            row(4, 8, 1, 8, "BCBC", "B-C-"),
            row(4, 2, 1, 2, "BCBC", "B-C-"),
            row(3, 8, 1, 8, "BCC", "H--"),
            row(3, 2, 1, 2, "BCC", "H--"),
            row(6, 4, 1, 4, "BCCBCC", "H--H--"),
            row(6, 8, 3, 8, "BC", "H-"),
            row(9, 8, 3, 8, "BCC", "H--"),
            row(12, 8, 3, 8, "BCBC", "B-C-"),
            row(5, 4, 1, 4, "BCCBC", "H--H-"),
            row(5, 8, 1, 8, "BCCBC", "H--H-"),
            row(7, 4, 1, 4, "BCBCBCC", "H-H-H--"),
            row(7, 8, 1, 8, "BCBCBCC", "H-H-H--"));

    private static Pattern row(int beats, int unit, int stepNumerator, int stepDenominator, String full, String fewer) {
        return new Pattern(Meter.of(beats, unit), MusicalTime.of(stepNumerator, stepDenominator), full, fewer);
    }

    /**
     * The pattern of a meter: the table's row; else by the groups as written, a bass and then chords in each; else, and
     * in free time, both held.
     */
    public static Pattern of(Meter meter) {
        for (Pattern pattern : TABLE) if (pattern.meter.equals(meter)) return pattern;
        if (meter.groups().size() < 2) return new Pattern(meter, meter.length(), "H", "H");
        StringBuilder beats = new StringBuilder();
        StringBuilder fewer = new StringBuilder();
        for (int group : meter.groups()) {
            beats.append(group == 1 ? "H" : "B" + "C".repeat(group - 1));
            fewer.append("H").append("-".repeat(group - 1));
        }
        return new Pattern(meter, MusicalTime.of(1, meter.unit()), beats.toString(), fewer.toString());
    }

    /** A letter with its place in the measure. */
    record Slot(MusicalTime offset, char letter) {}

    /** The slots at which something is struck. */
    List<Slot> slots(boolean fast) {
        String letters = fast ? fewer : beats;
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < letters.length(); i++)
            if (letters.charAt(i) != '-') slots.add(new Slot(step.times(i), letters.charAt(i)));
        return slots;
    }
}
