package org.mantice.app.sheet;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import org.mantice.app.words.MusicWords;
import org.mantice.instrument.Accordion;
import org.mantice.tune.MusicalTime;

/**
 * What a strip is laid out from: a plan, and a line of the sheet.
 *
 * @param cells of the whole sheet
 */
record BandLine(PlayedPlan plan, Accordion accordion, MeasureGrid.Line line, List<Cell> cells, SheetWords words) {
    private static final double HATCH_STEP = 1.1;
    /** How far before a note its moment is drawn where something happens just before it. */
    private static final double LEAD = 0.95;
    /** How far before the first note of a line what is drawn begins. */
    private static final double HEAD_START = 1.3;

    MusicWords music() {
        return words.music();
    }

    /** Where what is drawn begins: just before the first note, behind clef and key. */
    double left() {
        return left(line);
    }

    static double left(MeasureGrid.Line line) {
        MeasureGrid.Box first = line.boxes().get(0);
        double note = first.positions().isEmpty()
                ? first.x()
                : first.positions().get(first.positions().firstKey());
        return Math.max(first.x(), note - HEAD_START);
    }

    double right() {
        return line.boxes().get(line.boxes().size() - 1).right();
    }

    /** The x just before what is written at an offset; at the start of a measure its barline. */
    double justBefore(MeasureGrid.Box box, MusicalTime offset) {
        if (offset.isZero()) return box == line.boxes().get(0) ? left() : box.x();
        double x = box.xOf(offset);
        return x >= box.right() ? box.right() : Math.max(start(box), x - LEAD);
    }

    double start(MeasureGrid.Box box) {
        return box == line.boxes().get(0) ? left() : box.x();
    }

    /** Whether a cell goes on in play where the one before it on the sheet stopped. */
    boolean goesOn(int cell) {
        if (cell <= 0 || cell >= cells.size()) return false;
        Cell before = cells.get(cell - 1);
        Cell here = cells.get(cell);
        return before.played().isPresent()
                && here.played().isPresent()
                && before.played().getAsInt() + 1 == here.played().getAsInt();
    }

    /** Barlines, and hatching where nothing is played in what is shown. */
    List<Item> ground(double height) {
        return ground(height, new Shelf());
    }

    /** @param texts that barlines do not cross */
    List<Item> ground(double height, Shelf texts) {
        List<Item> items = new ArrayList<>();
        List<Line2D> bars = new ArrayList<>();
        List<Line2D> hatching = new ArrayList<>();
        for (MeasureGrid.Box box : line.boxes()) {
            if (texts.isFree(box.right(), box.right()))
                bars.add(new Line2D.Double(box.right(), 0, box.right(), height));
            if (box.cell().played().isEmpty()) hatch(hatching, start(box), box.right(), height);
        }
        if (!bars.isEmpty()) items.add(Item.Lines.of(bars, Ink.FAINT, 0.1));
        if (!hatching.isEmpty()) items.add(Item.Lines.of(hatching, Ink.FAINT, 0.07));
        return items;
    }

    private static void hatch(List<Line2D> lines, double left, double right, double height) {
        for (double x = left - height + HATCH_STEP; x < right; x += HATCH_STEP) {
            double from = Math.max(x, left);
            double to = Math.min(x + height, right);
            if (to <= from) continue;
            lines.add(new Line2D.Double(from, height - (from - x), to, height - (to - x)));
        }
    }
}
