package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.List;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.rule.TurnPlace.Mark;
import org.mantice.rule.TurnPlace.Strength;
import org.mantice.tune.Barlines;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** The played measures as a ruler: beats, sections, pickups, seconds. */
final class MeasureLine {
    private static final long MICRO_BEATS = 1_000_000;

    private final Performance performance;
    private final List<PlayedMeasure> measures;
    private final long[] microBeats;
    private final Mark[] marks;
    private final int[] measureOfSection;
    private final MusicalTime[] pickup;

    MeasureLine(Performance performance) {
        this.performance = performance;
        this.measures = performance.measures();
        int count = measures.size();
        microBeats = new long[count + 1];
        marks = new Mark[count];
        measureOfSection = new int[count];
        pickup = new MusicalTime[count];
        int full = 0;
        MusicalTime upbeat = MusicalTime.ZERO;
        for (int i = 0; i < count; i++) {
            Measure here = written(i);
            microBeats[i + 1] = microBeats[i] + inMicroBeats(measures.get(i).length(), here.meter());
            marks[i] = mark(i);
            if (marks[i] != Mark.NONE) full = 0;
            measureOfSection[i] = full;
            if (here.pickup() && marks[i] != Mark.NONE) upbeat = here.length();
            pickup[i] = upbeat;
            if (!here.pickup()) full++;
        }
    }

    Measure written(int measure) {
        return performance.tune().measure(measures.get(measure).written());
    }

    PlayedMeasure played(int measure) {
        return measures.get(measure);
    }

    int count() {
        return measures.size();
    }

    /** What is written at the barline where the measure begins. */
    Mark markAt(int measure) {
        return marks[measure];
    }

    /** Full measures of the section before this one. */
    int measureOfSection(int measure) {
        return measureOfSection[measure];
    }

    /** Length of the pickup with which the section began; zero if without one. */
    MusicalTime pickupOf(int measure) {
        return pickup[measure];
    }

    /** Whether the measure is itself a pickup with which a section begins. */
    boolean isPickup(int measure) {
        return written(measure).pickup() && marks[measure] != Mark.NONE;
    }

    int measureHalfBeats(int measure) {
        Meter meter = written(measure).meter();
        long micro = inMicroBeats(meter.length(), meter);
        return (int) Math.max(1, (2 * micro + MICRO_BEATS / 2) / MICRO_BEATS);
    }

    /** Beats from the start of the performance in millionths. */
    long microBeatsAt(int measure, MusicalTime offset) {
        return microBeats[measure] + inMicroBeats(offset, written(measure).meter());
    }

    /** Beats at the end of a measure. */
    long microBeatsAfter(int measure) {
        return microBeats[measure + 1];
    }

    /** Time inside a measure, on a straight line from barline to barline. */
    long microsAt(int measure, MusicalTime offset) {
        PlayedMeasure here = measures.get(measure);
        long end = measure + 1 < measures.size() ? measures.get(measure + 1).startMicros() : performance.endMicros();
        MusicalTime length = here.length();
        MusicalTime share = offset.dividedBy(length);
        MusicalTime passed = share.times(end - here.startMicros());
        return here.startMicros() + Math.floorDiv(passed.numerator(), passed.denominator());
    }

    int beatMillis(int measure) {
        Measure here = written(measure);
        MusicalTime beat = here.meter().beat().min(here.length());
        return (int) ((microsAt(measure, beat) - measures.get(measure).startMicros()) / 1_000);
    }

    Strength strengthAt(int measure, MusicalTime offset) {
        Measure here = written(measure);
        Meter meter = here.meter();
        if (offset.isZero() && !here.pickup()) return Strength.BARLINE;
        MusicalTime missing =
                here.pickup() ? meter.length().minus(here.length()).max(MusicalTime.ZERO) : MusicalTime.ZERO;
        MusicalTime place = offset.plus(missing);
        if (!place.isMultipleOf(meter.beat())) return Strength.OFF_BEAT;
        return isMiddle(meter, place) ? Strength.STRONG_BEAT : Strength.BEAT;
    }

    private static boolean isMiddle(Meter meter, MusicalTime place) {
        if (meter.groups().size() > 1) {
            MusicalTime border = MusicalTime.ZERO;
            for (int group : meter.groups()) {
                border = border.plus(MusicalTime.of(group, meter.unit()));
                if (border.equals(place)) return true;
            }
            return false;
        }
        long beats = meter.length().countOf(meter.beat());
        boolean halves = beats == 4 || beats == 2 && meter.isCompound();
        return halves && place.times(2).equals(meter.length());
    }

    /** The beats of a measure from an offset on. */
    List<MusicalTime> beats(int measure, MusicalTime from) {
        List<MusicalTime> beats = new ArrayList<>();
        Measure here = written(measure);
        MusicalTime beat = here.meter().beat();
        for (MusicalTime at = MusicalTime.ZERO; at.isBefore(here.length()); at = at.plus(beat))
            if (!at.isBefore(from)) beats.add(at);
        return beats;
    }

    private Mark mark(int i) {
        if (i == 0 || measures.get(i).pass() != measures.get(i - 1).pass()) return Mark.PASS;
        Barlines left = written(i - 1).barlines();
        boolean section = left.doubleBar()
                || left.repeatEnd().isPresent()
                || written(i).barlines().repeatStart()
                || written(i).barlines().segno()
                || written(i).barlines().coda()
                || measures.get(i).written() <= measures.get(i - 1).written();
        return section ? Mark.SECTION : Mark.NONE;
    }

    private static long inMicroBeats(MusicalTime time, Meter meter) {
        return time.dividedBy(meter.beat()).times(MICRO_BEATS).countOf(MusicalTime.WHOLE);
    }
}
