package org.mantice.layer;

import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.Step;

/** The one place where rules are called for a cost, so that a rule that misbehaves is named with the place. */
public final class Pricing {
    private Pricing() {}

    /**
     * @param place for the message: {@code "pass 1, measure 3, beat 2"}
     * @return millipoints, 0 to {@link Integer#MAX_VALUE}, or {@link Rule#BAN}
     * @throws RuleFailureException if the rule throws, or gives a number that is not allowed
     */
    public static <S extends Step> long cost(Rule<S> rule, S step, String place) {
        String id = rule.info().id();
        long cost;
        try {
            cost = rule.cost(step);
        } catch (RuntimeException | LinkageError | StackOverflowError | AssertionError e) {
            throw new RuleFailureException(id, place, e);
        }
        if (cost == Rule.BAN) {
            if (rule.info().banGivesWay().isEmpty())
                throw new RuleFailureException(id, place, "bans, but does not say how its bans give way");
            return cost;
        }
        if (cost < 0 || cost > Integer.MAX_VALUE)
            throw new RuleFailureException(id, place, "gave the cost " + cost + "; allowed: 0 to " + Integer.MAX_VALUE);
        return cost;
    }

    /**
     * The cost of a step on which no rule may ban.
     *
     * @throws RuleFailureException also if the rule bans
     */
    public static <S extends Step> long withoutBan(Rule<S> rule, S step, String place) {
        long cost = cost(rule, step, place);
        if (cost == Rule.BAN)
            throw new RuleFailureException(rule.info().id(), place, "bans, which is not allowed here; allowed: a cost");
        return cost;
    }

    /**
     * What a rule says of a step, checked: it must stand by its cost.
     *
     * @throws RuleFailureException if the rule throws, gives a number that is not allowed, or explains another one
     */
    public static <S extends Step> Reasons reasons(Rule<S> rule, S step, String place) {
        String id = rule.info().id();
        long cost = cost(rule, step, place);
        Reasons reasons;
        try {
            reasons = rule.explain(step);
        } catch (RuntimeException | LinkageError | StackOverflowError | AssertionError e) {
            throw new RuleFailureException(id, place, e);
        }
        if (reasons.cost() != cost)
            throw new RuleFailureException(id, place, "costs " + cost + ", but explains " + reasons.cost());
        return reasons;
    }
}
