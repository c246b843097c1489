package org.mantice.app.view;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.mantice.app.sheet.SheetPainter;
import org.mantice.app.sheet.SheetPainter.Target;
import org.mantice.app.sheet.Spot;

/** Where a step leads on a sheet. Up and down keep to one column, as a text cursor does. */
final class SheetWalk {
    private static final double SAME_ROW = 0.5;

    private final SheetPainter sheet;
    private final int bands;

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
    }

    Optional<Target> start() {
        for (int band = 0; band < bands; band++)
            if (!sheet.targets(band).isEmpty())
                return Optional.of(sheet.targets(band).get(0));
        return Optional.empty();
    }

    Optional<Target> find(int band, Spot spot) {
        if (band < 0 || band >= bands) return Optional.empty();
        return sheet.boundsOf(band, spot).map(bounds -> new Target(band, spot, bounds));
    }

    /** @param column the x to keep to when going up or down */
    Optional<Target> from(Target here, Step step, double column) {
        return switch (step) {
            case LEFT -> beside(here, -1);
            case RIGHT -> beside(here, 1);
            case FIRST -> ofStrip(here).stream().findFirst();
            case LAST -> ofStrip(here).stream().reduce((before, last) -> last);
            case UP -> nearest(all(), below(here, false), false, column);
            case DOWN -> nearest(all(), below(here, true), true, column);
            case LINE_UP -> nearest(ofStrip(here), below(here, false), false, column);
            case LINE_DOWN -> nearest(ofStrip(here), below(here, true), true, column);
        };
    }

    private Optional<Target> beside(Target here, int way) {
        List<Target> strip = ofStrip(here);
        for (int i = 0; i < strip.size(); i++)
            if (strip.get(i).spot().equals(here.spot())) {
                int next = i + way;
                while (next >= 0
                        && next < strip.size()
                        && strip.get(next).spot().equals(here.spot())) next += way;
                return next < 0 || next >= strip.size() ? Optional.empty() : Optional.of(strip.get(next));
            }
        return Optional.empty();
    }

    private List<Target> ofStrip(Target here) {
        return sheet.targets(here.band()).stream()
                .filter(target -> target.spot().strip() == here.spot().strip())
                .toList();
    }

    private List<Target> all() {
        return java.util.stream.IntStream.range(0, bands)
                .mapToObj(sheet::targets)
                .flatMap(List::stream)
                .toList();
    }

    private static Predicate<Target> below(Target here, boolean down) {
        return down
                ? target -> target.bounds().getMinY() > here.bounds().getMaxY() - SAME_ROW
                : target -> target.bounds().getMaxY() < here.bounds().getMinY() + SAME_ROW;
    }

    /** Of the nearest row that way, what is nearest to the column. */
    private static Optional<Target> nearest(
            List<Target> among, Predicate<Target> thatWay, boolean down, double column) {
        List<Target> candidates = among.stream().filter(thatWay).toList();
        Comparator<Target> byRow = Comparator.comparingDouble(
                target -> down ? target.bounds().getMinY() : -target.bounds().getMaxY());
        Optional<Target> first = candidates.stream().min(byRow);
        return first.flatMap(edge -> candidates.stream()
                .filter(target -> target.band() == edge.band()
                        && target.spot().strip() == edge.spot().strip()
                        && overlaps(target, edge))
                .min(Comparator.comparingDouble(
                                (Target target) -> Math.abs(target.bounds().getCenterX() - column))
                        .thenComparing(byRow)));
    }

    private static boolean overlaps(Target one, Target other) {
        return one.bounds().getMinY() < other.bounds().getMaxY()
                && other.bounds().getMinY() < one.bounds().getMaxY();
    }
}
