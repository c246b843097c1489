package org.mantice.plan;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * Strokes of the bellows, in order of play, from the first note to the end.
 *
 * @param planFactorPerMille the largest factor on all air, in per mille, that still stays within closed and full
 *     opening from the same start
 * @param planFactorUncertainPerMille the same if the instrument takes as much air as the estimate allows; equal to the
 *     former once measured
 * @param provenBest false if the label budget ran out
 * @param gap micropoints by which a better plan may exist at most; 0 if proven best
 */
public record BellowsPlan(
        List<Stroke> strokes,
        int planFactorPerMille,
        int planFactorUncertainPerMille,
        boolean provenBest,
        long gap,
        SortedMap<String, Long> costByRule,
        List<Concession> concessions)
        implements LayerPlan {
    /** Opening (pull) or closing (push); players say out and in. */
    public enum Direction {
        OUT,
        IN;

        public Direction turned() {
            return this == OUT ? IN : OUT;
        }
    }

    /**
     * One stroke.
     *
     * @param pass in which it begins, from 1
     * @param measure index of the played measure in which it begins
     * @param place where it begins: just before what is written there
     * @param onset from the start of the performance
     * @param startMillilitres air in the bellows at its start
     * @param endMillilitres and at its end
     * @param marginMillilitres how much more air it could take before the hard limit
     * @param marginUncertainMillilitres the same with the estimate's own uncertainty; may be negative
     * @param slowestTempoMilli the slowest tempo, in thousandths of a beat a minute, at which the stroke still fits
     *     from its planned start
     * @param turnWords what the place of the turn into it offers, in words; empty for the first stroke
     */
    public record Stroke(
            int index,
            int pass,
            int measure,
            WrittenPlace place,
            MusicalTime onset,
            MusicalTime length,
            long startMicros,
            long endMicros,
            Direction direction,
            int startMillilitres,
            int endMillilitres,
            int marginMillilitres,
            int marginUncertainMillilitres,
            int slowestTempoMilli,
            String turnWords) {
        public int airMillilitres() {
            return Math.abs(endMillilitres - startMillilitres);
        }
    }

    public BellowsPlan {
        strokes = List.copyOf(strokes);
        costByRule = Collections.unmodifiableSortedMap(new TreeMap<>(costByRule));
        concessions = List.copyOf(concessions);
    }

    public int turns() {
        return Math.max(0, strokes.size() - 1);
    }

    @Override
    public List<Decision> decisions() {
        return strokes.stream()
                .map(stroke -> new Decision(
                        Decision.Kind.TURN,
                        stroke.pass(),
                        stroke.place(),
                        0,
                        stroke.direction().name().toLowerCase(java.util.Locale.ROOT)))
                .toList();
    }
}
