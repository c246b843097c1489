package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.mantice.performance.PlayedMeasure;
import org.mantice.plan.BellowsPlan.Stroke;
import org.mantice.tune.MusicalTime;

/** How far the bellows are open along a line of the sheet. */
final class Fan {
    private static final double TEAR = 0.55;

    private final BandLine line;
    private final List<Piece> pieces = new ArrayList<>();

    /** @param millilitres air in the bellows */
    record Point(double x, double millilitres) {}

    /**
     * What a line shows of one stroke without a break.
     *
     * @param top opening over x, from left to right, two points or more
     * @param begins the stroke begins here
     * @param ends the stroke ends here
     * @param tornLeft what the sheet shows before is not what is played before
     * @param tornRight what the sheet shows next is not what is played next
     */
    record Piece(Stroke stroke, List<Point> top, boolean begins, boolean ends, boolean tornLeft, boolean tornRight) {
        Piece {
            top = List.copyOf(top);
        }

        double left() {
            return top.get(0).x();
        }

        double right() {
            return top.get(top.size() - 1).x();
        }

        /** Between the ends, straight between the points. */
        double millilitresAt(double x) {
            int next = 1;
            while (next + 1 < top.size() && top.get(next).x() < x) next++;
            Point from = top.get(next - 1);
            Point to = top.get(next);
            if (to.x() <= from.x()) return to.millilitres();
            double share = Math.max(0, Math.min(1, (x - from.x()) / (to.x() - from.x())));
            return from.millilitres() * (1 - share) + to.millilitres() * share;
        }
    }

    private Fan(BandLine line) {
        this.line = line;
    }

    /** From left to right. */
    static List<Piece> of(BandLine line) {
        Fan fan = new Fan(line);
        for (MeasureGrid.Box box : line.line().boxes()) {
            OptionalInt played = box.cell().played();
            if (played.isEmpty()) continue;
            PlayedMeasure measure = line.plan().measure(played.getAsInt());
            for (Stroke stroke : line.plan().strokes()) fan.add(box, measure, stroke);
        }
        return fan.pieces;
    }

    private void add(MeasureGrid.Box box, PlayedMeasure measure, Stroke stroke) {
        MusicalTime end = measure.start().plus(measure.length());
        MusicalTime strokeEnd = stroke.onset().plus(stroke.length());
        MusicalTime from = stroke.onset().max(measure.start());
        MusicalTime to = strokeEnd.min(end);
        if (!from.isBefore(to)) return;
        boolean tornLeft = from.equals(measure.start()) && measure.index() > 0 && !line.goesOn(box.index());
        boolean last =
                measure.index() + 1 == line.plan().performance().measures().size();
        boolean tornRight = to.equals(end) && !last && !line.goesOn(box.index() + 1);
        List<Point> top = new ArrayList<>();
        for (MusicalTime time : times(box, measure, from, to)) {
            double x = xOf(box, measure, time);
            if (tornLeft && time.equals(from)) x += TEAR;
            if (tornRight && time.equals(to)) x -= TEAR;
            top.add(new Point(x, opening(stroke, time)));
        }
        join(new Piece(stroke, top, from.equals(stroke.onset()), to.equals(strokeEnd), tornLeft, tornRight));
    }

    /** The ends, and every written moment between, for x is not even in time. */
    private static TreeSet<MusicalTime> times(
            MeasureGrid.Box box, PlayedMeasure measure, MusicalTime from, MusicalTime to) {
        TreeSet<MusicalTime> times = new TreeSet<>();
        for (MusicalTime offset : box.positions().keySet()) {
            MusicalTime time = measure.start().plus(offset);
            if (from.isBefore(time) && time.isBefore(to)) times.add(time);
        }
        times.add(from);
        times.add(to);
        return times;
    }

    private double xOf(MeasureGrid.Box box, PlayedMeasure measure, MusicalTime time) {
        MusicalTime offset = time.minus(measure.start());
        return offset.equals(measure.length()) ? box.right() : line.justBefore(box, offset);
    }

    private static double opening(Stroke stroke, MusicalTime time) {
        MusicalTime since = time.minus(stroke.onset());
        if (since.isZero()) return stroke.startMillilitres();
        if (since.equals(stroke.length())) return stroke.endMillilitres();
        double share = PlayedPlan.inWholes(since) / PlayedPlan.inWholes(stroke.length());
        return stroke.startMillilitres() + share * (stroke.endMillilitres() - stroke.startMillilitres());
    }

    private void join(Piece piece) {
        int last = pieces.size() - 1;
        if (last < 0 || piece.tornLeft() || !pieces.get(last).stroke().equals(piece.stroke())) {
            pieces.add(piece);
            return;
        }
        Piece before = pieces.get(last);
        List<Point> top = new ArrayList<>(before.top());
        top.addAll(piece.top().subList(1, piece.top().size()));
        pieces.set(
                last,
                new Piece(piece.stroke(), top, before.begins(), piece.ends(), before.tornLeft(), piece.tornRight()));
    }
}
