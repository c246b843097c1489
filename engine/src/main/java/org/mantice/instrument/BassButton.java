package org.mantice.instrument;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A button of the Stradella bass.
 *
 * @param column fifths from the C column: F -1, C 0, G 1
 */
public record BassButton(BassRow row, int column) implements Comparable<BassButton> {
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

    @Override
    public int compareTo(BassButton other) {
        int byRow = row.compareTo(other.row);
        return byRow != 0 ? byRow : Integer.compare(column, other.column);
    }
}
