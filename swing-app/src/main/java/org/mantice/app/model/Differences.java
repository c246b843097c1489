package org.mantice.app.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.mantice.app.sheet.Spot;
import org.mantice.performance.Performance;
import org.mantice.plan.Decision;
import org.mantice.plan.Plan;
import org.mantice.tune.WrittenPlace;

/** The decisions in which several plans do not all agree. */
final class Differences {
    /** One decision, whatever is decided. A place that is played twice is told apart by the played measure. */
    private record Key(int measure, WrittenPlace place, Decision.Kind kind, int moment, int part)
            implements Comparable<Key> {
        private static final Comparator<Key> ORDER = Comparator.comparingInt(Key::measure)
                .thenComparing(Key::place)
                .thenComparing(Key::kind)
                .thenComparingInt(Key::moment)
                .thenComparingInt(Key::part);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }

        static Key of(Site site) {
            Spot spot = site.spot();
            return new Key(spot.measure(), spot.place(), site.decision().kind(), site.moment(), spot.part());
        }
    }

    private final TreeMap<Key, List<Optional<String>>> values = new TreeMap<>();
    private final Map<Key, Spot> spots = new TreeMap<>();

    private Differences(List<Plan> plans, Performance performance) {
        for (int i = 0; i < plans.size(); i++)
            for (Site site : Site.of(plans.get(i), performance)) {
                Key key = Key.of(site);
                spots.putIfAbsent(key, site.spot());
                values.computeIfAbsent(
                                key, fresh -> new ArrayList<>(Collections.nCopies(plans.size(), Optional.empty())))
                        .set(i, Optional.of(site.decision().value()));
            }
    }

    /**
     * In order of play, place and kind. A hand place that differs where a finger of the same moment does too is the same
     * difference and not listed: players see fingers.
     *
     * @param plans of one performance; of fewer than two there is nothing to tell
     */
    static List<Difference> between(List<Plan> plans, Performance performance) {
        return plans.size() < 2 ? List.of() : new Differences(plans, performance).list();
    }

    private List<Difference> list() {
        List<Key> differing = new ArrayList<>();
        Set<Integer> otherFingers = new HashSet<>();
        values.forEach((key, each) -> {
            if (each.stream().distinct().count() < 2) return;
            differing.add(key);
            if (key.kind() == Decision.Kind.FINGER) otherFingers.add(key.moment());
        });
        return differing.stream()
                .filter(key -> key.kind() != Decision.Kind.HAND_PLACE || !otherFingers.contains(key.moment()))
                .map(key -> new Difference(
                        key.kind(), Objects.requireNonNull(spots.get(key)), Objects.requireNonNull(values.get(key))))
                .toList();
    }
}
