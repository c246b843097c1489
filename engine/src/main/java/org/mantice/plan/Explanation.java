package org.mantice.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.mantice.rule.Fact;

/**
 * A tree of reasons: plan, layer, rule, place, facts. Every parent is the sum of its children.
 *
 * @param key what the node stands for: {@code plan}, a rule set's id, a rule's id, or {@code place}
 * @param place empty above places; else pass, measure and beat in a form that sorts as played, as in
 *     {@code "pass 1, measure 3, beat 2"}
 * @param cost micropoints: millipoints times the weight in per mille
 * @param facts why; only leaves have any
 */
public record Explanation(String key, String place, long cost, List<Fact> facts, List<Explanation> children) {
    /** @throws IllegalArgumentException if the children do not add up to the cost */
    public Explanation {
        facts = List.copyOf(facts);
        children = List.copyOf(children);
        if (!children.isEmpty() && sum(children) != cost)
            throw new IllegalArgumentException(
                    "cost of " + key + " is " + cost + "; allowed: the sum of its children, " + sum(children));
    }

    public static Explanation leaf(String key, String place, long cost, List<Fact> facts) {
        return new Explanation(key, place, cost, facts, List.of());
    }

    public static Explanation sumOf(String key, List<Explanation> children) {
        return new Explanation(key, "", sum(children), List.of(), children);
    }

    private static long sum(List<Explanation> children) {
        long total = 0;
        for (Explanation child : children) total = Math.addExact(total, child.cost);
        return total;
    }

    /**
     * This tree minus another: what costs more here is positive. Places that agree are left out; a place that differs
     * keeps the facts of the dearer side.
     */
    public Explanation minus(Explanation other) {
        Map<String, Explanation> mine = byIdentity(children);
        Map<String, Explanation> theirs = byIdentity(other.children);
        Set<String> identities = new LinkedHashSet<>(mine.keySet());
        identities.addAll(theirs.keySet());
        List<Explanation> differences = new ArrayList<>();
        for (String identity : identities.stream().sorted().toList()) {
            Optional<Explanation> here = Optional.ofNullable(mine.get(identity));
            Optional<Explanation> there = Optional.ofNullable(theirs.get(identity));
            Explanation difference = here.map(own -> there.map(own::minus).orElse(own))
                    .orElseGet(() -> there.orElseThrow().negated());
            if (difference.cost != 0 || !difference.children.isEmpty()) differences.add(difference);
        }
        long cost = Math.subtractExact(this.cost, other.cost);
        List<Fact> reasons = cost > 0 ? facts : cost < 0 ? other.facts : List.of();
        return new Explanation(key, place, cost, reasons, differences);
    }

    public Explanation negated() {
        return new Explanation(
                key,
                place,
                Math.negateExact(cost),
                facts,
                children.stream().map(Explanation::negated).toList());
    }

    private static Map<String, Explanation> byIdentity(List<Explanation> nodes) {
        Map<String, Explanation> map = new LinkedHashMap<>();
        for (Explanation node : nodes) {
            String identity = node.key + "\n" + node.place;
            int copy = 2;
            while (map.containsKey(identity)) identity = node.key + "\n" + node.place + "\n" + copy++;
            map.put(identity, node);
        }
        return map;
    }
}
