package org.mantice.app.sheet;

import java.util.List;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * A measure as signs of the staff, without their places across the page.
 *
 * @param events in order; they fill the measure
 * @param beams groups of two or more events that share a beam
 * @param tuplets groups of events under one number
 */
record StaffMeasure(Measure measure, List<StaffEvent> events, List<List<Integer>> beams, List<List<Integer>> tuplets) {
    StaffMeasure {
        events = List.copyOf(events);
        beams = List.copyOf(beams);
        tuplets = List.copyOf(tuplets);
    }

    static StaffMeasure of(Measure measure) {
        return new MeasureWriter(measure).write();
    }

    /** How far the measure's start lies behind the meter's first beat: above 0 in a pickup. */
    static MusicalTime behind(Measure measure) {
        Meter meter = measure.meter();
        boolean late = measure.pickup() && measure.length().isBefore(meter.length());
        return late ? meter.length().minus(measure.length()) : MusicalTime.ZERO;
    }
}
