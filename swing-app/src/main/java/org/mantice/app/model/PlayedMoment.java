package org.mantice.app.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * A moment of a played measure at which something happens: notes are struck, a chord begins, or in one of the plans a
 * button is pressed or a stroke begins. Grace notes have moments of their own.
 *
 * @param measure index of the played measure
 * @param first whether it is the first moment at its place: a stroke begins there, a chord symbol stands there
 * @param main whether buttons are pressed at it: neither a grace note before nor one after
 * @param startsPass whether it is the first moment of a pass
 */
record PlayedMoment(
        int measure,
        WrittenPlace place,
        long micros,
        Optional<TrebleMoment> treble,
        Optional<HarmonySpan> chord,
        boolean first,
        boolean main,
        boolean startsPass) {
    private static final class Place {
        private final List<TrebleMoment> moments = new ArrayList<>();
        private Optional<HarmonySpan> chord = Optional.empty();
        private long micros = Long.MAX_VALUE;
    }

    /** All moments of the measures given, in their order. @param measures indexes of played measures */
    static List<PlayedMoment> of(Performance performance, Collection<Plan> plans, List<Integer> measures) {
        Map<Integer, TreeMap<MusicalTime, Place>> places = new HashMap<>();
        for (int measure : new TreeSet<>(measures)) places.put(measure, new TreeMap<>());
        chords(performance, places);
        for (TrebleMoment moment : performance.treble())
            at(places, moment.measure(), moment.place(), moment.onsetMicros())
                    .ifPresent(place -> place.moments.add(moment));
        for (Plan plan : plans) {
            for (LeftHandPlan.Event event : plan.leftHand().events())
                at(places, event.measure(), event.place(), event.onsetMicros());
            for (BellowsPlan.Stroke stroke : plan.bellows().strokes())
                at(places, stroke.measure(), stroke.place(), stroke.startMicros());
        }
        List<PlayedMoment> all = new ArrayList<>();
        for (int measure : measures) {
            int written = performance.measures().get(measure).written();
            boolean startsPass = performance.passes().stream().anyMatch(pass -> pass.firstMeasure() == measure);
            for (Map.Entry<MusicalTime, Place> place :
                    Objects.requireNonNull(places.get(measure)).entrySet()) {
                add(all, measure, new WrittenPlace(written, place.getKey()), place.getValue(), startsPass);
                startsPass = false;
            }
        }
        return all;
    }

    private static void chords(Performance performance, Map<Integer, TreeMap<MusicalTime, Place>> places) {
        Optional<HarmonySpan> before = Optional.empty();
        for (HarmonySpan span : performance.harmony()) {
            boolean same = before.isPresent() && before.get().chord().equals(span.chord());
            if (span.chord().isPresent() && !same)
                at(places, span.measure(), span.place(), span.startMicros())
                        .ifPresent(place -> place.chord = Optional.of(span));
            before = Optional.of(span);
        }
    }

    private static Optional<Place> at(
            Map<Integer, TreeMap<MusicalTime, Place>> places, int measure, WrittenPlace where, long micros) {
        if (!places.containsKey(measure)) return Optional.empty();
        Place place = places.get(measure).computeIfAbsent(where.offset(), offset -> new Place());
        place.micros = Math.min(place.micros, micros);
        return Optional.of(place);
    }

    private static void add(List<PlayedMoment> all, int measure, WrittenPlace where, Place place, boolean startsPass) {
        if (place.moments.isEmpty())
            all.add(new PlayedMoment(
                    measure, where, place.micros, Optional.empty(), place.chord, true, true, startsPass));
        int main = mainOf(place.moments);
        for (int i = 0; i < place.moments.size(); i++) {
            TrebleMoment moment = place.moments.get(i);
            all.add(new PlayedMoment(
                    measure,
                    where,
                    moment.onsetMicros(),
                    Optional.of(moment),
                    i == 0 ? place.chord : Optional.empty(),
                    i == 0,
                    i == main,
                    startsPass && i == 0));
        }
    }

    /** The ordinary moment; at a place with grace notes alone the first. */
    private static int mainOf(List<TrebleMoment> moments) {
        for (int i = 0; i < moments.size(); i++) if (moments.get(i).graceIndex() == 0) return i;
        return 0;
    }

    /** Whether a spot is meant that is shown at this moment; of grace notes none is. */
    boolean isAt(Spot spot) {
        if (spot.strip() == Strip.REGISTERS) return startsPass && spot.measure() == measure;
        boolean right = spot.strip() == Strip.BELLOWS ? first : main;
        return right && spot.measure() == measure && spot.place().equals(place);
    }
}
