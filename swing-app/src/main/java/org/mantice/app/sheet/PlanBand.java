package org.mantice.app.sheet;

import java.util.List;
import java.util.Set;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;

/**
 * The strips of one plan: on every line of the sheet each plan has its band below the common staff.
 *
 * @param letter by which the plan is called, {@code "A"} to {@code "L"}
 * @param title the letter and what the plan is, for the head of its band
 * @param place among the plans compared, from 0 to 3: chooses colour and shape of its mark
 * @param chosen whether it is the one the player has chosen
 * @param differing where its decision differs from that of another plan compared
 * @param locks the decisions that the player has locked
 */
public record PlanBand(
        String letter, String title, int place, boolean chosen, Plan plan, Set<Spot> differing, List<Lock> locks) {
    public PlanBand {
        differing = Set.copyOf(differing);
        locks = List.copyOf(locks);
    }
}
