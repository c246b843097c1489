package org.mantice.performance;

import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Places in words: one form everywhere, so that explanations, files and messages agree. */
public final class Places {
    private Places() {}

    /** As {@code "pass 1, measure 3, beat 2"}, or {@code "beat 2+1/8"} between beats. */
    public static String words(Performance performance, PlayedMeasure measure, WrittenPlace place) {
        return "pass " + measure.pass() + ", " + words(performance.tune(), place);
    }

    /** As {@code "measure 3, beat 2"}: the written place, whatever the pass; by index if the tune has no such measure. */
    public static String words(Tune tune, WrittenPlace place) {
        if (place.measure() >= tune.measures().size())
            return "written measure " + (place.measure() + 1) + ", offset " + place.offset();
        Measure written = tune.measure(place.measure());
        return "measure " + written.number() + ", beat " + beat(written, place.offset());
    }

    /** Beats counted from 1; a pickup counts back from the barline. */
    public static String beat(Measure measure, MusicalTime offset) {
        Meter meter = measure.meter();
        MusicalTime beat = meter.beat();
        MusicalTime missing =
                measure.pickup() ? meter.length().minus(measure.length()).max(MusicalTime.ZERO) : MusicalTime.ZERO;
        MusicalTime inMeasure = offset.plus(missing);
        long whole = inMeasure.countOf(beat);
        MusicalTime rest = inMeasure.minus(beat.times(whole));
        return (whole + 1) + (rest.isZero() ? "" : "+" + rest);
    }
}
