package org.mantice.plan;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.ButtonNames;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** What the left hand presses, in order of play. */
public record LeftHandPlan(List<Event> events, SortedMap<String, Long> costByRule, List<Concession> concessions)
        implements LayerPlan {
    /** How far the hand must move in the time there is. */
    public enum Jump {
        NONE,
        SMALL,
        LARGE
    }

    /**
     * One press of one or more buttons.
     *
     * @param pass from 1
     * @param measure index of the played measure
     * @param place where it belongs in the written music
     * @param onset from the start of the performance
     * @param fingers for each button, 2 to 5
     * @param handColumn the column under the fourth finger
     * @param sounding pitch classes that sound, with those held on
     * @param missing pitch classes of the chord symbol that do not sound in the span of the chord
     * @param foreign pitch classes that sound and are not in the symbol
     * @param substitutions what was replaced and why, in words; empty for the plain buttons
     * @param jump into this event
     * @param jumpMillis time the move needs by the player's jump figures, 0 if the hand stays
     * @param availableMillis time there is for it, from the release before
     */
    public record Event(
            int index,
            int pass,
            int measure,
            WrittenPlace place,
            MusicalTime onset,
            long onsetMicros,
            long releaseMicros,
            List<BassButton> buttons,
            List<Integer> fingers,
            int handColumn,
            SortedSet<Integer> sounding,
            SortedSet<Integer> missing,
            SortedSet<Integer> foreign,
            List<String> substitutions,
            Jump jump,
            long jumpMillis,
            long availableMillis) {
        public Event {
            buttons = List.copyOf(buttons);
            fingers = List.copyOf(fingers);
            sounding = Collections.unmodifiableSortedSet(new TreeSet<>(sounding));
            missing = Collections.unmodifiableSortedSet(new TreeSet<>(missing));
            foreign = Collections.unmodifiableSortedSet(new TreeSet<>(foreign));
            substitutions = List.copyOf(substitutions);
        }
    }

    public LeftHandPlan {
        events = List.copyOf(events);
        costByRule = Collections.unmodifiableSortedMap(new TreeMap<>(costByRule));
        concessions = List.copyOf(concessions);
    }

    @Override
    public List<Decision> decisions() {
        return events.stream()
                .map(event ->
                        new Decision(Decision.Kind.BUTTONS, event.pass(), event.place(), 0, name(event.buttons())))
                .toList();
    }

    /** Buttons in words, as {@code "C bass + C major"}. */
    public static String name(List<BassButton> buttons) {
        return buttons.stream().map(ButtonNames::of).collect(Collectors.joining(" + "));
    }
}
