package org.mantice.harmony;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * The beats of a measure: those of the meter, its groups where it is written in groups, quarters in free time. A pickup
 * has the last beats of the meter.
 *
 * @param perMeasure beats of a full measure
 */
record Beats(List<Beat> beats, int perMeasure) {
    private static final int MOST = 64;

    /**
     * A beat.
     *
     * @param index in a full measure, from 0
     * @param start from the start of the measure as notated
     * @param length of the full beat, of which a measure may have a part
     */
    record Beat(int index, MusicalTime start, MusicalTime end, MusicalTime length) {}

    static Beats of(Measure measure) {
        Meter meter = measure.meter();
        List<MusicalTime> lengths = lengths(measure);
        MusicalTime missing = meter.length().minus(measure.length());
        boolean late = measure.pickup() && !meter.isFree() && missing.isPositive();
        MusicalTime skipped = late ? missing : MusicalTime.ZERO;
        List<Beat> beats = new ArrayList<>();
        MusicalTime start = MusicalTime.ZERO.minus(skipped);
        for (int i = 0; start.isBefore(measure.length()); i++) {
            MusicalTime length = lengths.get(Math.min(i, lengths.size() - 1));
            MusicalTime end = start.plus(length);
            if (end.isPositive())
                beats.add(new Beat(i, start.max(MusicalTime.ZERO), end.min(measure.length()), length));
            start = end;
        }
        return new Beats(beats, meter.isFree() ? beats.size() : lengths.size());
    }

    /** Of a full measure's beats; longer ones where a measure would have too many. */
    private static List<MusicalTime> lengths(Measure measure) {
        Meter meter = measure.meter();
        MusicalTime longest = measure.length().max(meter.length());
        if (meter.groups().size() > 1
                && meter.groups().size() <= MOST
                && !meter.length().isBefore(measure.length()))
            return meter.groups().stream()
                    .map(group -> MusicalTime.of(group, meter.unit()))
                    .toList();
        MusicalTime beat = meter.isFree() ? MusicalTime.QUARTER : meter.beat();
        while (beat.times(MOST).isBefore(longest)) beat = beat.times(2);
        List<MusicalTime> lengths = new ArrayList<>();
        for (MusicalTime at = MusicalTime.ZERO; at.isBefore(meter.length()); at = at.plus(beat)) lengths.add(beat);
        return lengths;
    }

    /** As in {@link Slot#beatPlace()}. */
    int place(int index) {
        int n = perMeasure;
        if (n == 2) return Math.min(index, 1);
        if (n == 4) return 5 + Math.min(index, 3);
        if (n % 3 == 0) return index == 0 ? 2 : index % (n / 3) != 0 || index == n / 3 ? 3 : 4;
        return index == 0 ? 5 : n % 2 == 0 && index * 2 == n ? 7 : 6;
    }

    /** Of measures of four or more even beats. */
    boolean sharesHalf(int one, int other) {
        return perMeasure >= 4 && perMeasure % 2 == 0 && isLate(one) == isLate(other);
    }

    int othersInHalf(int one) {
        int all = 0;
        for (int i = 0; i < beats.size(); i++) if (isLate(i) == isLate(one)) all++;
        return all - 1;
    }

    private boolean isLate(int number) {
        return beats.get(number).index() * 2 >= perMeasure;
    }
}
