package org.mantice.rule;

import java.util.OptionalInt;

/**
 * Two moments of the left hand after each other.
 *
 * @param neededMillis what the move of the hand place takes by the player's own figures, 0 if the hand stays
 * @param availableMillis from the release of the first to the onset of the second, 0 or more
 * @param columnsToMark columns from the second hand place to the nearest button that the instrument marks to the touch,
 *     0 or more; empty where it marks none
 */
public record ButtonPair(
        ButtonMoment from, ButtonMoment to, long neededMillis, long availableMillis, OptionalInt columnsToMark)
        implements LeftHandStep {
    public ButtonPair {
        if (neededMillis < 0)
            throw new IllegalArgumentException("neededMillis is " + neededMillis + "; allowed: 0 or more");
        if (availableMillis < 0)
            throw new IllegalArgumentException("availableMillis is " + availableMillis + "; allowed: 0 or more");
        if (columnsToMark.orElse(0) < 0)
            throw new IllegalArgumentException("columnsToMark is " + columnsToMark.getAsInt() + "; allowed: 0 or more");
    }

    /** Columns by which the hand place moves, whichever way. */
    public int columns() {
        return Math.abs(to.handColumn() - from.handColumn());
    }
}
