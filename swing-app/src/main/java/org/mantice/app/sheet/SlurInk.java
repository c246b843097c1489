package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Inks the slurs of a line: below where all stems point up, else above; high enough to clear what they join. */
final class SlurInk {
    private static final double GAP = 0.4;
    private static final double MOST_RISE = 4.5;
    /** A head with its stem. */
    private static final double REACH = Engraving.HALF_HEAD + 0.05;

    private static final int SAMPLES = 8;

    private final LineInk ink;
    private final StaffLine line;

    SlurInk(LineInk ink, StaffLine line) {
        this.ink = ink;
        this.line = line;
    }

    /** Short slurs first, so that long ones go round them. */
    void write(List<SheetSpans.Slur> slurs) {
        List<SheetSpans.Slur> here = new ArrayList<>();
        for (SheetSpans.Slur slur : slurs)
            if (slur.toCell() >= line.first() && slur.fromCell() <= line.last()) here.add(slur);
        here.sort(Comparator.comparingDouble(slur -> right(slur) - left(slur)));
        here.forEach(this::write);
    }

    private void write(SheetSpans.Slur slur) {
        boolean above = isAbove(slur);
        double sign = above ? -1 : 1;
        double x1 = left(slur);
        double x2 = right(slur);
        if (x2 - x1 < 0.8) return;
        boolean hasStart = line.has(slur.fromCell()) && !slur.openStart();
        boolean hasEnd = line.has(slur.toCell()) && !slur.openEnd();
        double y1 = hasStart ? edge(x1, above) : Double.NaN;
        double y2 = hasEnd ? edge(x2, above) : Double.NaN;
        if (!hasStart) y1 = hasEnd ? y2 : edgeOfStaff(above);
        if (!hasEnd) y2 = y1;
        Curve curve = clear(slur, new Curve(x1, y1, x2, y2, sign * Math.min(0.7 + 0.07 * (x2 - x1), 2.2)), above);
        ink.played(line.isPlayed(Math.max(slur.fromCell(), line.first())));
        ink.quietly(curve.outline());
        for (int i = 0; i < SAMPLES; i++) take(curve, (double) i / SAMPLES, (i + 1.0) / SAMPLES);
    }

    private void take(Curve curve, double from, double to) {
        double a = curve.y(from);
        double b = curve.y(to);
        ink.take(curve.x(from), curve.x(to), Math.min(a, b) - 0.15, Math.max(a, b) + 0.15);
    }

    private double left(SheetSpans.Slur slur) {
        if (!line.has(slur.fromCell())) return line.left();
        PlacedMeasure measure = line.of(slur.fromCell());
        return slur.openStart() ? measure.box().x() + measure.opening().width() + 0.3 : measure.x(slur.fromEvent());
    }

    private double right(SheetSpans.Slur slur) {
        if (!line.has(slur.toCell())) return line.right() - GAP;
        PlacedMeasure measure = line.of(slur.toCell());
        return slur.openEnd() ? measure.box().right() - GAP : measure.x(slur.toEvent());
    }

    private boolean isAbove(SheetSpans.Slur slur) {
        for (int cell = slur.fromCell(); cell <= slur.toCell(); cell++) {
            List<StaffEvent> events = line.sheet().staff(cell).events();
            int from = cell == slur.fromCell() ? slur.fromEvent() : 0;
            int to = cell == slur.toCell() ? slur.toEvent() : events.size() - 1;
            for (int i = from; i <= to; i++)
                if (!events.get(i).isRest() && !events.get(i).stemUp()) return true;
        }
        return false;
    }

    private static double edgeOfStaff(boolean above) {
        return above ? -0.8 : 4.8;
    }

    private double edge(double x, boolean above) {
        return above ? ink.highest(x - REACH, x + REACH, 4) - GAP : ink.lowest(x - REACH, x + REACH, 0) + GAP;
    }

    /** Raised until it passes everything between its ends. */
    private Curve clear(SheetSpans.Slur slur, Curve curve, boolean above) {
        double sign = above ? -1 : 1;
        double rise = Math.abs(curve.rise());
        double most = Math.max(rise, Math.min(MOST_RISE, 0.35 * (curve.x2() - curve.x1())));
        double shift = 0;
        List<double[]> obstacles = obstacles(slur, curve, above);
        for (double[] obstacle : obstacles) {
            double share = curve.share(obstacle[0]);
            double lacks = sign * (obstacle[1] - curve.y1() - (curve.y2() - curve.y1()) * share);
            double bow = 3 * share * (1 - share);
            rise = Math.min(most, Math.max(rise, lacks / Math.max(bow, 0.05)));
        }
        for (double[] obstacle : obstacles) {
            double share = curve.share(obstacle[0]);
            double straight = curve.y1() + (curve.y2() - curve.y1()) * share;
            shift = Math.max(shift, sign * (obstacle[1] - straight) - 3 * share * (1 - share) * rise);
        }
        return new Curve(curve.x1(), curve.y1() + sign * shift, curve.x2(), curve.y2() + sign * shift, sign * rise);
    }

    private List<double[]> obstacles(SheetSpans.Slur slur, Curve curve, boolean above) {
        List<double[]> obstacles = new ArrayList<>();
        for (int cell = Math.max(slur.fromCell(), line.first()); cell <= Math.min(slur.toCell(), line.last()); cell++) {
            PlacedMeasure measure = line.of(cell);
            for (int i = 0; i < measure.staff().events().size(); i++) {
                double x = measure.x(i);
                if (x < curve.x1() + 0.5 || x > curve.x2() - 0.5) continue;
                obstacles.add(new double[] {x, edge(x, above)});
            }
        }
        return obstacles;
    }
}
