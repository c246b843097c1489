package org.mantice.layer;

import java.util.List;
import org.mantice.plan.Explanation;
import org.mantice.plan.LayerPlan;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;
import org.mantice.tune.WrittenPlace;

/**
 * One layer of planning with the layers before it fixed. Making one calls the rules; every question after that is
 * answered from the kept numbers without calling a rule, except {@link #explain} and {@link #rescore}.
 *
 * @param <P> its plans
 */
public interface Layer<P extends LayerPlan> {
    RuleSet ruleSet();

    /** The best plans in order; exact on the integers of the lattice unless the answer says otherwise. */
    Outcome<P> best(Question question);

    /**
     * The best plan that differs from each given plan in at least {@code decisions} named decisions.
     *
     * @param from plans of this layer, one or more
     * @param decisions 1 to 8
     */
    Outcome<P> apart(Question question, List<P> from, int decisions);

    /** The tree for this layer: rule, place, facts; its cost equals the plan's cost under the taste. */
    Explanation explain(P plan, Taste taste);

    /** The same decisions priced anew by the rules: the plan as it would have been found. */
    P rescore(P plan);

    /** What else was possible at a place in a pass, each with what it would cost, best first. */
    List<Choice> choicesAt(Question question, int pass, WrittenPlace place);
}
