package org.mantice.player;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much each rule counts for this player.
 *
 * @param weights per mille of a rule's default by rule id, 0 (off) to 100,000; a rule that is not named counts 1,000
 */
public record Taste(SortedMap<String, Integer> weights) {
    public static final Taste PLAIN = new Taste(new TreeMap<>());
    public static final int DEFAULT_PER_MILLE = 1_000;

    public Taste {
        weights.forEach((rule, weight) -> {
            if (weight < 0 || weight > 100_000)
                throw new IllegalArgumentException(
                        "weight of rule " + rule + " is " + weight + " per mille; allowed: 0 to 100000");
        });
        weights = Collections.unmodifiableSortedMap(new TreeMap<>(weights));
    }

    public int perMille(String ruleId) {
        return weights.getOrDefault(ruleId, DEFAULT_PER_MILLE);
    }

    public Taste with(String ruleId, int perMille) {
        SortedMap<String, Integer> changed = new TreeMap<>(weights);
        changed.put(ruleId, perMille);
        return new Taste(changed);
    }
}
