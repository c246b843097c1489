package org.mantice.app.sheet;

import org.mantice.tune.MusicalTime;

/** A measure's signs with their places on the page. */
final class PlacedMeasure {
    private final StaffMeasure staff;
    private final MeasureGrid.Box box;
    private final Opening opening;
    private final double closing;
    private final double[] x;
    private final double[] tips;

    /** @param closing width of the right barline */
    PlacedMeasure(StaffMeasure staff, MeasureGrid.Box box, Opening opening, double closing) {
        this.staff = staff;
        this.box = box;
        this.opening = opening;
        this.closing = closing;
        this.x = staff.events().stream()
                .mapToDouble(event -> box.xOf(event.offset()))
                .toArray();
        this.tips = Stems.tips(staff, box);
    }

    StaffMeasure staff() {
        return staff;
    }

    MeasureGrid.Box box() {
        return box;
    }

    Opening opening() {
        return opening;
    }

    double closing() {
        return closing;
    }

    /** The middle of an event's ordinary heads. */
    double x(int event) {
        return x[event];
    }

    double x(MusicalTime offset) {
        return box.xOf(offset);
    }

    /** Where an event's stem ends. */
    double tip(int event) {
        return tips[event];
    }

    /** Between the opening and the right barline. */
    double middle() {
        return (box.x() + opening.width() + box.right() - closing) / 2;
    }
}
