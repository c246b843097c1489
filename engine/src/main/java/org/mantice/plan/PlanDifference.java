package org.mantice.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.mantice.tune.WrittenPlace;

/**
 * The named decisions in which two plans of one tune differ, in order of pass, place and kind.
 *
 * @param kind what is decided
 * @param first the value in the first plan; empty where it decides nothing there
 * @param second the value in the second plan
 */
public record PlanDifference(
        Decision.Kind kind, int pass, WrittenPlace place, int part, Optional<String> first, Optional<String> second) {
    private record Key(int pass, WrittenPlace place, Decision.Kind kind, int part, int played)
            implements Comparable<Key> {
        private static final Comparator<Key> ORDER = Comparator.comparingInt(Key::pass)
                .thenComparing(Key::place)
                .thenComparing(Key::kind)
                .thenComparingInt(Key::part)
                .thenComparingInt(Key::played);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    public static List<PlanDifference> between(Plan first, Plan second) {
        Map<Key, String> here = byKey(first);
        Map<Key, String> there = byKey(second);
        TreeSet<Key> keys = new TreeSet<>(here.keySet());
        keys.addAll(there.keySet());
        List<PlanDifference> differences = new ArrayList<>();
        for (Key key : keys) {
            Optional<String> mine = Optional.ofNullable(here.get(key));
            Optional<String> theirs = Optional.ofNullable(there.get(key));
            if (!mine.equals(theirs))
                differences.add(new PlanDifference(key.kind, key.pass, key.place, key.part, mine, theirs));
        }
        return List.copyOf(differences);
    }

    /** A place played twice in one pass (a repeated part) is told apart by when it is played. */
    private static Map<Key, String> byKey(Plan plan) {
        Map<Key, String> map = new LinkedHashMap<>();
        for (Decision decision : plan.variation().decisions()) put(map, decision, 0);
        Iterator<Decision> buttons = plan.leftHand().decisions().iterator();
        for (LeftHandPlan.Event event : plan.leftHand().events()) put(map, buttons.next(), event.measure());
        Iterator<Decision> turns = plan.bellows().decisions().iterator();
        for (BellowsPlan.Stroke stroke : plan.bellows().strokes()) put(map, turns.next(), stroke.measure());
        Iterator<Decision> fingers = plan.rightHand().decisions().iterator();
        for (RightHandPlan.Event event : plan.rightHand().events())
            for (int i = 0; i <= event.fingers().size(); i++) put(map, fingers.next(), event.moment());
        return map;
    }

    private static void put(Map<Key, String> map, Decision decision, int played) {
        map.put(new Key(decision.pass(), decision.place(), decision.kind(), decision.part(), played), decision.value());
    }
}
