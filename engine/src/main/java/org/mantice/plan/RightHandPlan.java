package org.mantice.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.rule.HandMove;
import org.mantice.tune.WrittenPlace;

/** Fingers and hand places, one entry for each treble moment in order of play. */
public record RightHandPlan(List<Event> events, SortedMap<String, Long> costByRule, List<Concession> concessions)
        implements LayerPlan {
    /**
     * The hand at one moment.
     *
     * @param moment index of the treble moment
     * @param pass from 1
     * @param keys MIDI numbers as played, the pass's octave applied, ascending
     * @param fingers for each key, 1 to 5
     * @param handPlace the key under the thumb at rest, counted in white keys from C0 = 0
     * @param move into this moment; {@link HandMove#STAY} for the first
     */
    public record Event(
            int moment,
            int pass,
            WrittenPlace place,
            List<Integer> keys,
            List<Integer> fingers,
            int handPlace,
            HandMove move) {
        public Event {
            keys = List.copyOf(keys);
            fingers = List.copyOf(fingers);
        }
    }

    public RightHandPlan {
        events = List.copyOf(events);
        costByRule = Collections.unmodifiableSortedMap(new TreeMap<>(costByRule));
        concessions = List.copyOf(concessions);
    }

    public long positionChanges() {
        return events.stream().filter(event -> event.move() != HandMove.STAY).count();
    }

    @Override
    public List<Decision> decisions() {
        List<Decision> decisions = new ArrayList<>();
        for (Event event : events) {
            for (int note = 0; note < event.fingers().size(); note++)
                decisions.add(new Decision(
                        Decision.Kind.FINGER,
                        event.pass(),
                        event.place(),
                        note,
                        event.fingers().get(note).toString()));
            decisions.add(new Decision(
                    Decision.Kind.HAND_PLACE, event.pass(), event.place(), 0, Integer.toString(event.handPlace())));
        }
        return List.copyOf(decisions);
    }
}
