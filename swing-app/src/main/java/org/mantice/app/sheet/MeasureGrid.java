package org.mantice.app.sheet;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.tune.MusicalTime;

/**
 * Where the measures of a sheet lie: lines of boxes, each with the positions of what is written in it. Staff and strips
 * share it, so that everything at one moment stands at one x. In staff spaces from the left and top of the sheet.
 *
 * @param width of the whole sheet
 * @param lines from top to bottom, their tops not yet known: the height of a line depends on its strips
 */
public record MeasureGrid(double width, List<Line> lines) {
    /** A line of measures. */
    public record Line(List<Box> boxes) {
        public Line {
            boxes = List.copyOf(boxes);
        }
    }

    /**
     * A measure.
     *
     * @param index of its cell among the sheet's cells
     * @param x of its left barline
     * @param width to its right barline
     * @param positions x of each written moment from the start of the measure, for the first onset after clef, key and
     *     meter to the end of the measure, which is the right barline; x is absolute and the middle of an ordinary
     *     notehead
     */
    public record Box(int index, Cell cell, double x, double width, SortedMap<MusicalTime, Double> positions) {
        public Box {
            positions = Collections.unmodifiableSortedMap(new TreeMap<>(positions));
        }

        public double right() {
            return x + width;
        }

        /** The x of an offset, between the nearest known ones where it is none of them. */
        public double xOf(MusicalTime offset) {
            Double exact = positions.get(offset);
            if (exact != null) return exact;
            SortedMap<MusicalTime, Double> before = positions.headMap(offset);
            SortedMap<MusicalTime, Double> after = positions.tailMap(offset);
            if (before.isEmpty()) return after.isEmpty() ? x : first(after);
            if (after.isEmpty()) return right();
            double from = inWholes(before.lastKey());
            double to = inWholes(after.firstKey());
            double share = (inWholes(offset) - from) / (to - from);
            return Objects.requireNonNull(before.get(before.lastKey())) * (1 - share) + first(after) * share;
        }

        private static double first(SortedMap<MusicalTime, Double> positions) {
            return Objects.requireNonNull(positions.get(positions.firstKey()));
        }

        private static double inWholes(MusicalTime time) {
            return (double) time.numerator() / time.denominator();
        }
    }

    public MeasureGrid {
        lines = List.copyOf(lines);
    }

    /** Which line each cell is in, by index of the cell. */
    public Map<Integer, Integer> lineOfCells() {
        Map<Integer, Integer> lineOf = new HashMap<>();
        for (int line = 0; line < lines.size(); line++)
            for (Box box : lines.get(line).boxes()) lineOf.put(box.index(), line);
        return lineOf;
    }
}
