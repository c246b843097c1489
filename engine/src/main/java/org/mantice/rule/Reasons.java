package org.mantice.rule;

import java.util.List;

/**
 * The explanation of one call of a rule.
 *
 * @param cost the same number that {@link Rule#cost} gives
 * @param facts in a fixed order; empty where the cost is 0
 */
public record Reasons(long cost, List<Fact> facts) {
    public static final Reasons NOTHING = new Reasons(0, List.of());

    public Reasons {
        facts = List.copyOf(facts);
    }

    public static Reasons of(long cost, Fact... facts) {
        return new Reasons(cost, List.of(facts));
    }
}
