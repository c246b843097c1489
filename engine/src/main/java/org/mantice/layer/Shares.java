package org.mantice.layer;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.rule.Rule;

/** Adds up what each rule charges, so that rules that charge nothing are named too. */
public final class Shares {
    private final SortedMap<String, Long> byRule = new TreeMap<>();

    public Shares(Iterable<? extends Rule<?>> rules) {
        for (Rule<?> rule : rules) byRule.put(rule.info().id(), 0L);
    }

    public void add(String ruleId, long millipoints) {
        byRule.merge(ruleId, millipoints, Math::addExact);
    }

    public SortedMap<String, Long> byRule() {
        return new TreeMap<>(Map.copyOf(byRule));
    }
}
