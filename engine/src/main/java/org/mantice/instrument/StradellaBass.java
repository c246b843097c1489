package org.mantice.instrument;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * The bass side.
 *
 * @param firstColumn fifths from C of the column nearest the floor
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
    public StradellaBass {
        rows = ordered(rows);
        if (columns < 0 || columns > 24) throw new IllegalArgumentException("columns is " + columns + "; allowed: 0 to 24");
        if (firstColumn < -14 || firstColumn > 14)
            throw new IllegalArgumentException("firstColumn is " + firstColumn + "; allowed: -14 to 14");
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
        return rows.contains(button.row()) && button.column() >= firstColumn && button.column() <= lastColumn();
    }
}
