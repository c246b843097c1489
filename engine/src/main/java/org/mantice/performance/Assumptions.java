package org.mantice.performance;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/**
 * What is taken for granted where a tune says nothing: tempo, loudness, times through. All estimates after common
 * practice, no source; each is shown as assumed.
 */
public final class Assumptions {
    /** Where nothing is written. Estimate. */
    public static final Loudness LOUDNESS = Loudness.MF;

    private Assumptions() {}

    /** The written tempo at the start, else one from dance and meter. */
    public static Tempo startTempo(Tune tune) {
        return writtenTempo(tune).orElseGet(() -> DanceTempos.tempo(tune));
    }

    /** The last metronome mark at or before the first note; empty if the first mark comes later or there is none. */
    public static Optional<Tempo> writtenTempo(Tune tune) {
        Optional<Tempo> found = Optional.empty();
        for (Measure measure : tune.measures()) {
            Optional<MusicalTime> firstNote = firstNote(measure);
            for (Mark mark : measure.marks())
                if (mark instanceof Mark.TempoChange change
                        && (firstNote.isEmpty() || !firstNote.get().isBefore(change.offset())))
                    found = Optional.of(change.tempo());
            if (firstNote.isPresent()) break;
        }
        return found;
    }

    /** Whether a loudness mark stands at or before the first note. */
    static boolean writesLoudness(Tune tune) {
        for (Measure measure : tune.measures()) {
            Optional<MusicalTime> firstNote = firstNote(measure);
            for (Mark mark : measure.marks())
                if (mark instanceof Mark.Dynamic
                        && (firstNote.isEmpty() || !firstNote.get().isBefore(mark.offset()))) return true;
            if (firstNote.isPresent()) break;
        }
        return false;
    }

    /**
     * 1 where the written repeats already make more than one pass, else 2: a tune is rarely played only once. Estimate.
     *
     * @throws TuneException if the tune is too long to be unrolled
     */
    public static int timesThrough(Tune tune) {
        List<Integer> order = PlayOrder.of(tune);
        boolean several = Passes.countIn(order, tune.measures().size()) > 1;
        return several || 2 * order.size() > PlayOrder.MOST_MEASURES ? 1 : 2;
    }

    /** The meter of the first full measure. */
    static Meter meter(Tune tune) {
        return tune.measures().stream()
                .filter(measure -> !measure.pickup())
                .findFirst()
                .orElse(tune.measure(0))
                .meter();
    }

    private static Optional<MusicalTime> firstNote(Measure measure) {
        return measure.melody().stream()
                .filter(event -> !event.isRest())
                .map(MelodyEvent::offset)
                .findFirst();
    }
}
