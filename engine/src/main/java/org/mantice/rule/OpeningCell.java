package org.mantice.rule;

/**
 * How far the bellows are open where a stroke begins or ends, as far as rules may know it: by fortieths of the air at
 * the comfortable opening.
 *
 * @param cell 0 when closed; n if more than n-1 and at most n fortieths are in the bellows; above {@link #COMFORTABLE}
 *     the opening is wider than comfortable
 * @param moment where in the performance
 */
public record OpeningCell(int cell, Moment moment) implements BellowsStep {
    /** The last cell that is comfortable. */
    public static final int COMFORTABLE = 40;

    /** Where the opening is looked at. */
    public enum Moment {
        /** Before the first note. */
        START,
        /** At a turn from out to in: the widest opening of both strokes. */
        TURN_IN,
        /** At a turn from in to out: the narrowest. */
        TURN_OUT,
        /** After the last note. */
        END
    }

    /** Per cent of the air at the comfortable opening, rounded up. */
    public int percent() {
        return (cell * 100 + COMFORTABLE - 1) / COMFORTABLE;
    }
}
