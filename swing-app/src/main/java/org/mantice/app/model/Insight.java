package org.mantice.app.model;

import java.util.List;
import org.mantice.layer.Choice;
import org.mantice.plan.Decision;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;

/**
 * Why, and why not: what is known of the selected place.
 *
 * @param here the plan's own decisions there
 * @param explanation the part of the plan's tree that speaks of this place; its cost is its share of the plan's
 * @param choices what else was possible, cheapest first, the plan's own among them
 * @param locks those that hold this place
 */
public record Insight(
        Selection selection, List<Decision> here, Explanation explanation, List<Choice> choices, List<Lock> locks) {
    public Insight {
        here = List.copyOf(here);
        choices = List.copyOf(choices);
        locks = List.copyOf(locks);
    }

    /** The same place with other locks; what the choices cost is then of before. */
    Insight under(List<Lock> all) {
        return new Insight(selection, here, explanation, choices, Locks.at(all, selection.spot()));
    }
}
