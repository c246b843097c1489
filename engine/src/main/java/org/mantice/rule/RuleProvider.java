package org.mantice.rule;

import java.util.List;

/**
 * A pack of rules, found through {@link java.util.ServiceLoader}. Needs a public constructor without parameters.
 */
public interface RuleProvider {
    /** Lower-case letters, digits, hyphens and dots. */
    String id();

    /** As {@code "1.2.0"}. */
    String version();

    /** Base name of the resource bundle that holds {@code <rule id>.title} and the texts of the facts. */
    String bundle();

    /** The rules in a fixed order. */
    List<Rule<?>> rules();

    /** Named sets of weights that players may start from; each becomes an alternative where it changes the plan. */
    default List<Leaning> leanings() {
        return List.of();
    }
}
