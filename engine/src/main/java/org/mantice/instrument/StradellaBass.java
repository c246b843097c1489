package org.mantice.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The bass side. Columns run in fifths, up toward the player's chin.
 *
 * @param firstColumn fifths from C of the column nearest the floor, -14 to 14
 * @param columns 0 (no bass) to 24
 * @param rows the rows there are
 * @param geometry where the buttons lie
 * @param reedsPerBassButton reeds that a bass or counterbass button opens, 1 to 8
 * @param reedsPerChordButton reeds that a chord button opens, 1 to 16
 */
public record StradellaBass(
        int firstColumn,
        int columns,
        Set<BassRow> rows,
        ButtonGeometry geometry,
        int reedsPerBassButton,
        int reedsPerChordButton) {
    /** Sizes that {@link #ofSize} knows. */
    public static final List<Integer> SIZES = List.of(8, 12, 24, 32, 40, 48, 60, 72, 80, 96, 120);

    public StradellaBass {
        rows = ordered(rows);
        if (columns < 0 || columns > 24)
            throw new IllegalArgumentException("columns is " + columns + "; allowed: 0 to 24");
        if (firstColumn < -14 || firstColumn > 14)
            throw new IllegalArgumentException("firstColumn is " + firstColumn + "; allowed: -14 to 14");
        if (firstColumn + columns - 1 > 24)
            throw new IllegalArgumentException("last column is " + (firstColumn + columns - 1) + "; allowed: up to 24");
        if (reedsPerBassButton < 1 || reedsPerBassButton > 8)
            throw new IllegalArgumentException("reedsPerBassButton is " + reedsPerBassButton + "; allowed: 1 to 8");
        if (reedsPerChordButton < 1 || reedsPerChordButton > 16)
            throw new IllegalArgumentException("reedsPerChordButton is " + reedsPerChordButton + "; allowed: 1 to 16");
    }

    private static Set<BassRow> ordered(Collection<BassRow> rows) {
        EnumSet<BassRow> copy = EnumSet.noneOf(BassRow.class);
        copy.addAll(rows);
        return Collections.unmodifiableSet(copy);
    }

    /**
     * The usual layout of a size, one of {@link #SIZES}. 48 has twelve columns of four rows; for the other 48, eight
     * columns of six, ask {@link #ofRows}. Reeds per button: of 96 buttons one instrument is published with 4 and 6;
     * fewer on small ones is an estimate.
     */
    public static StradellaBass ofSize(int buttons) {
        if (!SIZES.contains(buttons))
            throw new IllegalArgumentException("buttons is " + buttons + "; allowed: one of " + SIZES);
        EnumSet<BassRow> rows = EnumSet.allOf(BassRow.class);
        if (buttons <= 32) rows.remove(BassRow.COUNTERBASS);
        if (buttons <= 60 || buttons == 80) rows.remove(BassRow.DIMINISHED);
        if (buttons <= 24 || buttons == 48) rows.remove(BassRow.SEVENTH);
        if (buttons <= 12) rows.remove(BassRow.MINOR);
        return ofRows(buttons / rows.size(), rows);
    }

    /**
     * So many columns, even and 2 to 24, laid out by the law that fits every published size: from n/2 - 1 fifths below
     * C to n/2 above.
     */
    public static StradellaBass ofRows(int columns, Collection<BassRow> rows) {
        if (columns < 2 || columns > 24 || columns % 2 != 0)
            throw new IllegalArgumentException("columns is " + columns + "; allowed: even, 2 to 24");
        boolean small = columns * rows.size() <= 48;
        return new StradellaBass(
                1 - columns / 2, columns, ordered(rows), ButtonGeometry.ESTIMATE, small ? 2 : 4, small ? 3 : 6);
    }

    /** No bass at all. */
    public static StradellaBass none() {
        return new StradellaBass(0, 0, Set.of(), ButtonGeometry.ESTIMATE, 1, 1);
    }

    public boolean isAbsent() {
        return columns == 0 || rows.isEmpty();
    }

    public int buttons() {
        return columns * rows.size();
    }

    public int lastColumn() {
        return firstColumn + columns - 1;
    }

    public boolean has(BassButton button) {
        return rows.contains(button.row()) && hasColumn(button.column());
    }

    public boolean hasColumn(int column) {
        return column >= firstColumn && column <= lastColumn();
    }

    /** Every button, row by row from the bellows outward, each row from the floor up. */
    public List<BassButton> allButtons() {
        List<BassButton> all = new ArrayList<>();
        for (BassRow row : rows)
            for (int column = firstColumn; column <= lastColumn(); column++) all.add(new BassButton(row, column));
        return List.copyOf(all);
    }

    /**
     * The buttons of a row by the note that a player calls them by (for a counterbass the note it sounds), from the
     * floor up: none, one, or two where the instrument repeats columns.
     *
     * @param pitchClass 0 to 11
     */
    public List<BassButton> buttons(BassRow row, int pitchClass) {
        List<BassButton> found = new ArrayList<>();
        if (!rows.contains(row)) return List.of();
        for (int column = firstColumn; column <= lastColumn(); column++) {
            BassButton button = new BassButton(row, column);
            if (button.noteName().pitchClass() == pitchClass) found.add(button);
        }
        return List.copyOf(found);
    }

    /** The bass and counterbass buttons that sound a note, bass row first, each from the floor up. */
    public List<BassButton> bassButtons(int pitchClass) {
        List<BassButton> found = new ArrayList<>(buttons(BassRow.BASS, pitchClass));
        found.addAll(buttons(BassRow.COUNTERBASS, pitchClass));
        return List.copyOf(found);
    }
}
