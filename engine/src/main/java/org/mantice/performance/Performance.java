package org.mantice.performance;

import java.util.List;
import org.mantice.tune.Meter;
import org.mantice.tune.Tune;

/**
 * A tune as played.
 *
 * @param tune already transposed
 * @param treble moments of the right hand in order, one or more
 * @param harmony spans without gaps over all played measures
 * @param bass events of a written bass staff; empty where there is none
 * @param endMicros the end of the last measure
 */
public record Performance(
        Tune tune,
        Settings settings,
        List<Pass> passes,
        List<PlayedMeasure> measures,
        List<TrebleMoment> treble,
        List<HarmonySpan> harmony,
        List<BassMoment> bass,
        long endMicros) {
    public Performance {
        passes = List.copyOf(passes);
        measures = List.copyOf(measures);
        treble = List.copyOf(treble);
        harmony = List.copyOf(harmony);
        bass = List.copyOf(bass);
    }

    public Meter meterOf(PlayedMeasure measure) {
        return tune.measure(measure.written()).meter();
    }

    /** The pass in which a treble moment lies. */
    public int passOf(TrebleMoment moment) {
        return measures.get(moment.measure()).pass();
    }
}
