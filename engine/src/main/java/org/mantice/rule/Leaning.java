package org.mantice.rule;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A named set of weights that leans one layer one way.
 *
 * @param id lower-case letters and hyphens; {@code <id>.leaning} is its title in the provider's bundle
 * @param weights per mille of a rule's default by rule id; a rule not named keeps the player's own weight
 */
public record Leaning(String id, RuleSet ruleSet, SortedMap<String, Integer> weights) {
    public Leaning {
        if (!id.matches("[a-z][a-z0-9-]*"))
            throw new IllegalArgumentException("id is \"" + id + "\"; allowed: lower-case letters, digits and hyphens");
        weights = Collections.unmodifiableSortedMap(new TreeMap<>(weights));
    }
}
