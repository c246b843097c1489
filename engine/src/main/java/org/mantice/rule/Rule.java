package org.mantice.rule;

/**
 * One consideration with a price. A rule has no state, does no input or output, knows no clock, and gives the same
 * answer to the same step.
 *
 * @param <S> its reach: how much of the plan it looks at in one call
 */
public interface Rule<S extends Step> {
    /** Returned by {@link #cost} for a move that is not allowed; {@link RuleInfo#banGivesWay} must then be given. */
    long BAN = Long.MAX_VALUE;

    /** One ordinary change of hand position at a quarter note at 100, in millipoints: the unit of all rules. */
    long UNIT = 1_000;

    RuleInfo info();

    /** The step type that the rule looks at; one of {@link RuleSet#reaches()}. */
    Class<S> reach();

    /** Millipoints, 0 or more and at most {@link Integer#MAX_VALUE}, or {@link #BAN}. The fast path. */
    long cost(S step);

    /** The same number from the same constants, with its facts. The cold path. */
    Reasons explain(S step);
}
