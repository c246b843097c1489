package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.mantice.tune.MusicalTime;

/**
 * Breaks a sheet's measures into lines and gives every moment its x: longer notes more room, but less than twice as much
 * for twice the length; nothing touches; all lines but the last are as wide as the sheet. The breaks are those whose
 * lines together are stretched and squeezed least (after Knuth and Plass, Breaking Paragraphs into Lines, 1981). Time
 * grows with the number of measures times those that fit in a line.
 *
 * <p>The x of a moment is the middle of an ordinary notehead there.
 */
final class GridSpacing {
    /** How far a last line may be stretched. */
    private static final double LAST_STRETCH = 1.1;

    private static final double MOST_STRETCH = 50;
    /** What the last chord symbol of a line may reach over its barline. */
    private static final double SHEET_EDGE = 0.4;

    private final SheetMeasures measures;
    private final double width;
    private final List<MeasureSprings> springs = new ArrayList<>();

    private GridSpacing(SheetMeasures measures, double width, Function<Cell, PressRoom> presses) {
        this.measures = measures;
        this.width = width;
        for (int i = 0; i < measures.count(); i++)
            springs.add(new MeasureSprings(
                    measures.staff(i), measures.closing(i), measures.hasLeftHand(), presses.apply(measures.cell(i))));
    }

    /** With no regard to what stands on the strips. */
    static MeasureGrid of(SheetContent content, double width) {
        return of(content, width, cell -> PressRoom.NONE);
    }

    /**
     * @param width of the sheet in staff spaces
     * @param presses what the buttons need in each cell
     * @throws IllegalArgumentException if the width is not above 0
     */
    static MeasureGrid of(SheetContent content, double width, Function<Cell, PressRoom> presses) {
        if (!(width > 0)) throw new IllegalArgumentException("width is " + width + "; allowed: above 0");
        return new GridSpacing(new SheetMeasures(content), width, presses).grid();
    }

    private MeasureGrid grid() {
        int[] breaks = breaks();
        List<MeasureGrid.Line> lines = new ArrayList<>();
        for (int end = measures.count(); end > 0; end = breaks[end]) lines.add(0, line(breaks[end], end));
        return new MeasureGrid(width, lines);
    }

    /** For each end of a line the start of that line. */
    private int[] breaks() {
        int count = measures.count();
        double[] cost = new double[count + 1];
        int[] from = new int[count + 1];
        for (int end = 1; end <= count; end++) {
            cost[end] = Double.POSITIVE_INFINITY;
            double least = 0;
            double wish = 0;
            for (int start = end - 1; start >= 0; start--) {
                least += room(start, 0);
                wish += room(start, 1);
                double head = head(start, end);
                if (start < end - 1 && least + head > width - SHEET_EDGE) break;
                double total = cost[start] + badness(least + head, wish + head, end == count);
                if (total < cost[end]) {
                    cost[end] = total;
                    from[end] = start;
                }
            }
        }
        return from;
    }

    /** What a line costs for being loose or tight. */
    private double badness(double least, double wish, boolean last) {
        if (least > width) return 1000;
        double ratio = (width - SHEET_EDGE) / wish;
        if (last && ratio > 1) return 0.1;
        double off = ratio > 1 ? ratio - 1 : 2 * (1 / ratio - 1);
        return off * off + 0.02;
    }

    /** What clef, key and the like take more than the measures themselves. */
    private double head(int start, int end) {
        return measures.opening(start, true).width()
                - measures.opening(start, false).width()
                + measures.warning(end - 1).width();
    }

    /** A measure's width within a line, at a stretch. */
    private double room(int index, double stretch) {
        MeasureSprings measure = springs.get(index);
        double room = measures.opening(index, false).width() + measure.start();
        for (int gap = 0; gap < measure.gaps(); gap++) room += gap(measure, gap, stretch);
        return room;
    }

    private static double gap(MeasureSprings measure, int gap, double stretch) {
        return Math.max(measure.least(gap), stretch * measure.wish(gap));
    }

    private MeasureGrid.Line line(int start, int end) {
        double room = width - SHEET_EDGE - measures.warning(end - 1).width();
        double stretch = stretch(start, end, room);
        if (end == measures.count()) stretch = Math.min(stretch, LAST_STRETCH);
        double full = lineWidth(start, end, stretch);
        double scale = full > room ? room / full : 1;
        List<MeasureGrid.Box> boxes = new ArrayList<>();
        double x = 0;
        for (int index = start; index < end; index++) {
            MeasureGrid.Box box = box(index, index == start, x, stretch, scale);
            boxes.add(box);
            x = box.right();
        }
        return new MeasureGrid.Line(boxes);
    }

    /** The stretch at which the line just fills the room; 0 if it cannot. */
    private double stretch(int start, int end, double room) {
        double low = 0;
        double high = MOST_STRETCH;
        for (int step = 0; step < 40; step++) {
            double middle = (low + high) / 2;
            if (lineWidth(start, end, middle) <= room) low = middle;
            else high = middle;
        }
        return low;
    }

    private double lineWidth(int start, int end, double stretch) {
        double sum = measures.opening(start, true).width()
                - measures.opening(start, false).width();
        for (int index = start; index < end; index++) sum += room(index, stretch);
        return sum;
    }

    private MeasureGrid.Box box(int index, boolean lineStart, double x, double stretch, double scale) {
        MeasureSprings measure = springs.get(index);
        SortedMap<MusicalTime, Double> positions = new TreeMap<>();
        double at = x + scale * (measures.opening(index, lineStart).width() + measure.start());
        positions.put(measure.moments().get(0), at);
        for (int gap = 0; gap < measure.gaps(); gap++) {
            at += scale * gap(measure, gap, stretch);
            positions.put(measure.moments().get(gap + 1), at);
        }
        return new MeasureGrid.Box(index, measures.cell(index), x, at - x, positions);
    }
}
