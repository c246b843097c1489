package org.mantice.app.sheet;

import java.util.List;

/** Where the stems of a measure end, beamed or not. Lengths after Ross, The Art of Music Engraving and Processing, 1970. */
final class Stems {
    /** An octave. */
    private static final double LENGTH = 3.5;

    /** What flags of 32nds, 64ths and 128ths reach beyond an octave (Bravura, stemUpNW; stemDownSW is alike). */
    private static final double[] FLAG_UP = {0, -0.04, -0.088, 0.376, 1.172, 1.9};

    private static final double[] FLAG_DOWN = {0, 0.132, 0.128, -0.448, -1.244, -2.076};
    static final double MIDDLE_LINE = 2;
    private static final double MOST_RISE = 1.25;
    private static final double QUARTER_SPACE = 4;

    private final StaffMeasure staff;
    private final MeasureGrid.Box box;
    private final double[] tips;

    private Stems(StaffMeasure staff, MeasureGrid.Box box) {
        this.staff = staff;
        this.box = box;
        this.tips = new double[staff.events().size()];
    }

    /** For each event the y of its stem's end, of its outer head where it has no stem. */
    static double[] tips(StaffMeasure staff, MeasureGrid.Box box) {
        Stems stems = new Stems(staff, box);
        for (int i = 0; i < stems.tips.length; i++)
            stems.tips[i] = single(staff.events().get(i));
        staff.beams().forEach(stems::beam);
        return stems.tips;
    }

    /** The y of a line or space. */
    static double y(int place) {
        return (8 - place) / 2.0;
    }

    static double stemX(StaffEvent event, double x) {
        double side = Engraving.HALF_HEAD - Engraving.STEM / 2;
        return event.stemUp() ? x + side : x - side;
    }

    /** The y of a flag's origin from its stem's end. */
    static double flagShift(int flags, boolean up) {
        return up ? FLAG_UP[flags] : FLAG_DOWN[flags];
    }

    private static double single(StaffEvent event) {
        if (event.isRest()) return MIDDLE_LINE;
        double outer = y(event.stemUp() ? event.highest() : event.lowest());
        if (!event.value().hasStem()) return outer;
        double length = LENGTH + Math.max(0, Math.abs(flagShift(event.value().flags(), event.stemUp())) - 0.2);
        return event.stemUp() ? Math.min(outer - length, MIDDLE_LINE) : Math.max(outer + length, MIDDLE_LINE);
    }

    /** A straight beam: it follows the outer notes, less steeply, and lies flat where an inner one stands out. */
    private void beam(List<Integer> group) {
        boolean up = staff.events().get(group.get(0)).stemUp();
        double sign = up ? 1 : -1;
        double from = x(group.get(0));
        double to = x(group.get(group.size() - 1));
        double rise = rise(group, up, to - from);
        double slope = rise / (to - from);
        double start = Double.POSITIVE_INFINITY;
        for (int i : group) {
            StaffEvent event = staff.events().get(i);
            double nearest = sign * y(up ? event.highest() : event.lowest()) - least(event);
            start = Math.min(start, nearest - sign * slope * (x(i) - from));
        }
        start = Math.min(start, sign * MIDDLE_LINE + Math.min(0, -sign * rise));
        double snapped = Math.floor(start * QUARTER_SPACE) / QUARTER_SPACE;
        for (int i : group) tips[i] = sign * snapped + slope * (x(i) - from);
    }

    private double x(int event) {
        StaffEvent one = staff.events().get(event);
        return stemX(one, box.xOf(one.offset()));
    }

    private static double least(StaffEvent event) {
        return LENGTH + Math.max(0, event.value().flags() - 2) * (Engraving.BEAM + Engraving.BEAM_GAP);
    }

    private double rise(List<Integer> group, boolean up, double length) {
        double first = outer(group.get(0), up);
        double last = outer(group.get(group.size() - 1), up);
        double edge = up ? Math.min(first, last) : Math.max(first, last);
        for (int i : group.subList(1, group.size() - 1)) {
            double inner = outer(i, up);
            if (up ? inner <= edge : inner >= edge) return 0;
        }
        double most = Math.min(MOST_RISE, 0.25 * length);
        double wanted = (last - first) / 2;
        double rise = Math.max(-most, Math.min(most, wanted));
        return Math.rint(rise * QUARTER_SPACE) / QUARTER_SPACE;
    }

    private double outer(int event, boolean up) {
        StaffEvent one = staff.events().get(event);
        return y(up ? one.highest() : one.lowest());
    }
}
