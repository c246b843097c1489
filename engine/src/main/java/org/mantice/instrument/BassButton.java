package org.mantice.instrument;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.tune.NoteName;

/**
 * A button of the Stradella bass.
 *
 * @param column fifths from the C column: F -1, C 0, G 1; -24 to 24
 */
public record BassButton(BassRow row, int column) implements Comparable<BassButton> {
    public BassButton {
        if (column < -24 || column > 24)
            throw new IllegalArgumentException("column is " + column + "; allowed: -24 to 24");
    }

    /** Pitch class of the column's fundamental bass, 0 to 11. */
    public int rootPitchClass() {
        return Math.floorMod(7 * column, 12);
    }

    /** Pitch classes that the button sounds, 0 to 11. */
    public SortedSet<Integer> pitchClasses() {
        SortedSet<Integer> classes = new TreeSet<>();
        for (int interval : row.intervals()) classes.add(Math.floorMod(rootPitchClass() + interval, 12));
        return Collections.unmodifiableSortedSet(classes);
    }

    /** The note by which a player calls the button: the column's fundamental, for a counterbass its major third. */
    public NoteName noteName() {
        return NoteName.ofFifths(row == BassRow.COUNTERBASS ? column + 4 : column);
    }

    @Override
    public int compareTo(BassButton other) {
        int byRow = row.compareTo(other.row);
        return byRow != 0 ? byRow : Integer.compare(column, other.column);
    }

    /** As {@code "C bass"}, {@code "E counterbass"}, {@code "Eb minor"}. */
    @Override
    public String toString() {
        return ButtonNames.of(this);
    }
}
