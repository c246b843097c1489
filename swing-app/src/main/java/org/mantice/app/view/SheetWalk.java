package org.mantice.app.view;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.sheet.SheetPainter;
import org.mantice.app.sheet.SheetPainter.Target;
import org.mantice.app.sheet.Spot;

/**
 * Where a step leads on a sheet: along the chord line and the strips, and from one to the other. Up and down keep to one
 * column, as a text cursor does.
 */
final class SheetWalk {
    private static final double SAME_ROW = 0.5;

    private final SheetPainter sheet;
    private final int bands;
    private final List<ChordTarget> chords;
    private final Map<Integer, Rectangle2D> levels = new HashMap<>();

    /** Where a walk can stop. */
    sealed interface Stop {
        Rectangle2D bounds();

        /** Its height on the page for steps up and down. */
        default Rectangle2D level() {
            return bounds();
        }

        /** What it shares with those that left and right lead to. */
        String row();
    }

    /** A decision of a plan. */
    record Decided(Target target) implements Stop {
        @Override
        public Rectangle2D bounds() {
            return target.bounds();
        }

        @Override
        public String row() {
            return target.band() + " " + target.spot().strip();
        }
    }

    /** A place of the chord line, which keeps clear of high notes but is one row. @param level of the whole row */
    record Chord(ChordTarget target, Rectangle2D level) implements Stop {
        @Override
        public Rectangle2D bounds() {
            return target.bounds();
        }

        @Override
        public String row() {
            return "chords";
        }
    }

    /** The steps there are. */
    enum Step {
        LEFT,
        RIGHT,
        UP,
        DOWN,
        FIRST,
        LAST,
        LINE_UP,
        LINE_DOWN;

        boolean isUpright() {
            return this == UP || this == DOWN || this == LINE_UP || this == LINE_DOWN;
        }
    }

    SheetWalk(SheetPainter sheet, int bands) {
        this.sheet = sheet;
        this.bands = bands;
        this.chords = sheet.chords();
        for (ChordTarget target : chords) levels.merge(target.line(), target.bounds(), Rectangle2D::createUnion);
    }

    /** The first decision; without plans the first place of the chord line. */
    Optional<Stop> start() {
        for (int band = 0; band < bands; band++)
            if (!sheet.targets(band).isEmpty())
                return Optional.of(new Decided(sheet.targets(band).get(0)));
        return chords.stream().findFirst().map(this::chord);
    }

    Optional<Stop> find(int band, Spot spot) {
        if (band < 0 || band >= bands) return Optional.empty();
        return sheet.boundsOf(band, spot).map(bounds -> new Decided(new Target(band, spot, bounds)));
    }

    Optional<Stop> find(ChordSpot spot) {
        return sheet.chord(spot).map(this::chord);
    }

    private Chord chord(ChordTarget target) {
        return new Chord(target, Objects.requireNonNull(levels.get(target.line())));
    }

    /** @param column the x to keep to when going up or down */
    Optional<Stop> from(Stop here, Step step, double column) {
        return switch (step) {
            case LEFT -> beside(here, -1);
            case RIGHT -> beside(here, 1);
            case FIRST -> ofRow(here).stream().findFirst();
            case LAST -> ofRow(here).stream().reduce((before, last) -> last);
            case UP -> nearest(all(), below(here, false), false, column);
            case DOWN -> nearest(all(), below(here, true), true, column);
            case LINE_UP -> nearest(ofRow(here), below(here, false), false, column);
            case LINE_DOWN -> nearest(ofRow(here), below(here, true), true, column);
        };
    }

    private Optional<Stop> beside(Stop here, int way) {
        List<Stop> row = ofRow(here);
        for (int i = 0; i < row.size(); i++)
            if (isSame(row.get(i), here)) {
                int next = i + way;
                while (next >= 0 && next < row.size() && isSame(row.get(next), here)) next += way;
                return next < 0 || next >= row.size() ? Optional.empty() : Optional.of(row.get(next));
            }
        return Optional.empty();
    }

    private static boolean isSame(Stop one, Stop other) {
        if (one instanceof Decided a && other instanceof Decided b)
            return a.target().spot().equals(b.target().spot());
        if (one instanceof Chord a && other instanceof Chord b)
            return a.target().spot().equals(b.target().spot());
        return false;
    }

    private List<Stop> ofRow(Stop here) {
        return all().stream().filter(stop -> stop.row().equals(here.row())).toList();
    }

    private List<Stop> all() {
        List<Stop> all = new ArrayList<>();
        for (int band = 0; band < bands; band++) sheet.targets(band).forEach(target -> all.add(new Decided(target)));
        chords.forEach(target -> all.add(chord(target)));
        return all;
    }

    private static Predicate<Stop> below(Stop here, boolean down) {
        return down
                ? stop -> stop.level().getMinY() > here.level().getMaxY() - SAME_ROW
                : stop -> stop.level().getMaxY() < here.level().getMinY() + SAME_ROW;
    }

    /** Of the nearest row that way, what is nearest to the column. */
    private static Optional<Stop> nearest(List<Stop> among, Predicate<Stop> thatWay, boolean down, double column) {
        List<Stop> candidates = among.stream().filter(thatWay).toList();
        Comparator<Stop> byRow = Comparator.comparingDouble(
                stop -> down ? stop.level().getMinY() : -stop.level().getMaxY());
        Optional<Stop> first = candidates.stream().min(byRow);
        return first.flatMap(edge -> candidates.stream()
                .filter(stop -> stop.row().equals(edge.row()) && overlaps(stop, edge))
                .min(Comparator.comparingDouble(
                                (Stop stop) -> Math.abs(stop.bounds().getCenterX() - column))
                        .thenComparing(byRow)));
    }

    private static boolean overlaps(Stop one, Stop other) {
        return one.level().getMinY() < other.level().getMaxY()
                && other.level().getMinY() < one.level().getMaxY();
    }
}
