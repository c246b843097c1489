package org.mantice.instrument;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One row of bass buttons on an instrument.
 *
 * @param row what its buttons sound
 * @param firstColumn fifths from C of the button nearest the floor, by what it sounds, -14 to 14
 * @param columns buttons from the floor up, 1 to 24; the last column is at most 24
 * @param shift columns by which the whole row lies further up than its names say, -3 to 3; -1 where C diminished lies
 *     in the place of F diminished
 */
public record ButtonRow(BassRow row, int firstColumn, int columns, int shift) {
    public ButtonRow {
        if (firstColumn < -14 || firstColumn > 14)
            throw new IllegalArgumentException("firstColumn is " + firstColumn + "; allowed: -14 to 14");
        if (columns < 1 || columns > 24)
            throw new IllegalArgumentException("columns is " + columns + "; allowed: 1 to 24");
        if (firstColumn + columns - 1 > 24)
            throw new IllegalArgumentException("last column is " + (firstColumn + columns - 1) + "; allowed: up to 24");
        if (shift < -3 || shift > 3) throw new IllegalArgumentException("shift is " + shift + "; allowed: -3 to 3");
    }

    /** A row that lies where its names say. */
    public static ButtonRow of(BassRow row, int firstColumn, int columns) {
        return new ButtonRow(row, firstColumn, columns, 0);
    }

    /** The same buttons with their sounds moved along the row: {@code -1} lays C where F lay. */
    public ButtonRow shifted(int by) {
        return new ButtonRow(row, firstColumn - by, columns, shift + by);
    }

    public int lastColumn() {
        return firstColumn + columns - 1;
    }

    public boolean hasColumn(int column) {
        return column >= firstColumn && column <= lastColumn();
    }

    /** From the floor up. */
    public List<BassButton> buttons() {
        return IntStream.rangeClosed(firstColumn, lastColumn())
                .mapToObj(column -> new BassButton(row, column))
                .toList();
    }
}
