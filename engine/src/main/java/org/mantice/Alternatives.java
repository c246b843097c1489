package org.mantice;

import java.util.List;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Plan;

/** The answer to a request. */
public sealed interface Alternatives {
    /**
     * Plans worth comparing.
     *
     * @param plans in order of cost under the player's own weights; one or more. The first is the plan whose layers are
     *     each the best given those before, unless an alternative turned out cheaper as a whole
     * @param asked how many were asked for; when there are fewer, no others were both different and good enough
     */
    record Found(List<Plan> plans, int asked) implements Alternatives {
        public Found {
            plans = List.copyOf(plans);
            if (plans.isEmpty()) throw new IllegalArgumentException("plans is empty; allowed: one or more");
        }

        public Plan best() {
            return plans.get(0);
        }
    }

    /** Nothing can be played as asked, and why. */
    record NotPlayable(List<Obstacle> obstacles) implements Alternatives {
        public NotPlayable {
            obstacles = List.copyOf(obstacles);
        }
    }
}
