package org.mantice.layer.lefthand;

import org.mantice.instrument.ButtonGeometry;
import org.mantice.player.Jumps;

/**
 * How long the hand takes to move along the bass row: a + b × log2(D / W + 1), after P. M. Fitts, J. Exp. Psychology
 * 47, 1954. D is the move, W the button's width. The one place where the formula becomes whole milliseconds.
 */
public final class MoveTime {
    private static final int MOST_COLUMNS = 64;

    private final long[] millis = new long[MOST_COLUMNS];

    public MoveTime(Jumps jumps, ButtonGeometry geometry) {
        for (int columns = 1; columns < MOST_COLUMNS; columns++) {
            double distance = (double) columns * geometry.columnMicrons();
            double bits = StrictMath.log(distance / geometry.buttonMicrons() + 1) / StrictMath.log(2);
            millis[columns] = Math.round(jumps.startMillis() + jumps.millisPerBit() * bits);
        }
    }

    /**
     * Whole milliseconds for a move, 0 for none.
     *
     * @param columns -63 to 63
     */
    public long millis(int columns) {
        return millis[Math.abs(columns)];
    }
}
