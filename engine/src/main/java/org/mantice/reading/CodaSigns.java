package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.mantice.reading.ScoreSign.Order;
import org.mantice.tune.MusicalTime;

/**
 * Tells the two meanings of the coda sign apart: words and playback say which; of signs alone, the last one is where
 * the coda begins and those before are where one leaves for it. A single sign before the last jump is where one
 * leaves, and the coda begins after that jump.
 */
final class CodaSigns {
    /**
     * A sign whose meaning is known.
     *
     * @param leaves one leaves at the measure's end; else the coda begins at its start
     * @param inside the sign stood in mid-measure
     */
    record Settled(int measure, boolean leaves, boolean inside) {}

    private record Found(int measure, MusicalTime onset, Order.What what) {}

    private final List<ScoreMeasure> measures;
    private final List<MusicalTime> lengths;

    CodaSigns(List<ScoreMeasure> measures, List<MusicalTime> lengths) {
        this.measures = measures;
        this.lengths = lengths;
    }

    List<Settled> settle(IntPredicate hasJump) {
        List<Found> found = found();
        List<Found> starts = of(found, Order.What.CODA_START);
        List<Found> signs = of(found, Order.What.CODA_SIGN);
        List<Settled> settled = new ArrayList<>();
        for (Found each : of(found, Order.What.TO_CODA)) settled.add(new Settled(each.measure, true, false));
        for (Found each : starts) addStart(settled, each);
        if (!starts.isEmpty()) {
            int start = starts.get(starts.size() - 1).measure;
            for (Found each : signs) if (each.measure < start) settled.add(new Settled(each.measure, true, false));
        } else if (!signs.isEmpty()) settleSigns(settled, signs, hasJump);
        return settled;
    }

    private void settleSigns(List<Settled> settled, List<Found> signs, IntPredicate hasJump) {
        Found last = signs.get(signs.size() - 1);
        for (Found each : signs.subList(0, signs.size() - 1)) settled.add(new Settled(each.measure, true, false));
        int jump = IntStream.range(0, measures.size()).filter(hasJump).max().orElse(-1);
        boolean alone = settled.isEmpty();
        if (alone && last.measure <= jump) {
            settled.add(new Settled(last.measure, true, false));
            if (jump + 1 < measures.size()) settled.add(new Settled(jump + 1, false, false));
        } else addStart(settled, last);
    }

    private void addStart(List<Settled> settled, Found each) {
        boolean atEnd = !each.onset.isBefore(lengths.get(each.measure));
        int measure = atEnd ? each.measure + 1 : each.measure;
        if (measure < measures.size()) settled.add(new Settled(measure, false, !atEnd && each.onset.isPositive()));
    }

    private List<Found> found() {
        List<Found> found = new ArrayList<>();
        for (ScoreMeasure measure : measures) {
            for (ScoreBarline barline : measure.barlines())
                if (barline.coda()) {
                    boolean left = barline.location() == ScoreBarline.Location.LEFT;
                    MusicalTime onset = left ? MusicalTime.ZERO : lengths.get(measure.index());
                    found.add(new Found(measure.index(), onset, Order.What.CODA_SIGN));
                }
            for (ScoreSign sign : measure.signs())
                if (sign instanceof Order order) found.add(new Found(measure.index(), order.onset(), order.what()));
        }
        return found;
    }

    private static List<Found> of(List<Found> found, Order.What what) {
        return found.stream().filter(each -> each.what == what).toList();
    }
}
