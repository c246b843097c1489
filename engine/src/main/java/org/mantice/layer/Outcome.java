package org.mantice.layer;

import java.util.List;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.Obstacle;

/** What a layer answers. */
public sealed interface Outcome<P extends LayerPlan> {
    /**
     * Plans in order of cost, none twice; fewer than asked if there are no more.
     *
     * @param proven whether they are proven to be the best in this order
     */
    record Found<P extends LayerPlan>(List<P> plans, boolean proven) implements Outcome<P> {
        public Found {
            plans = List.copyOf(plans);
            if (plans.isEmpty()) throw new IllegalArgumentException("plans is empty; allowed: one or more");
        }

        public P best() {
            return plans.get(0);
        }
    }

    /** There is no plan, and why. */
    record Impossible<P extends LayerPlan>(List<Obstacle> obstacles) implements Outcome<P> {
        public Impossible {
            obstacles = List.copyOf(obstacles);
        }
    }
}
