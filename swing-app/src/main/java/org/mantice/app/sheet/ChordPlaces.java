package org.mantice.app.sheet;

import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** Where in a measure a chord symbol stands or may be put: at every chord, every beat, every note of the melody. */
public final class ChordPlaces {
    private ChordPlaces() {}

    /** Offsets from the start of the measure, ascending. */
    public static List<MusicalTime> of(Measure measure) {
        NavigableSet<MusicalTime> places = new TreeSet<>(beats(measure));
        measure.chords().forEach(chord -> places.add(chord.offset()));
        measure.melody().stream().filter(event -> !event.isRest()).forEach(event -> places.add(event.offset()));
        return List.copyOf(places.headSet(measure.length(), false));
    }

    /** Those of the meter, quarters in free time; a pickup has the last ones. */
    static List<MusicalTime> beats(Measure measure) {
        Meter meter = measure.meter();
        MusicalTime beat = meter.isFree() ? MusicalTime.QUARTER : meter.beat();
        MusicalTime behind = StaffMeasure.behind(measure);
        NavigableSet<MusicalTime> beats = new TreeSet<>();
        for (MusicalTime at = beat.times(behind.countOf(beat)).minus(behind);
                at.isBefore(measure.length());
                at = at.plus(beat)) if (at.numerator() >= 0) beats.add(at);
        return List.copyOf(beats);
    }
}
