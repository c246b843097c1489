package org.mantice.search;

import java.util.List;

/**
 * What a {@link StrokeSearch} found.
 *
 * @param plans best first, none twice
 * @param proven how many plans from the front are proven to be the best, in order; all of them unless the label budget
 *     ended
 * @param complete whether the search ended by itself: if so, fewer plans than asked for means that there are no more
 *     (that concede as little), and none means that none exists
 * @param costBound a cost below which there is no further plan than the proven ones (that concedes as little as
 *     {@code concessionBound}); 0 where the search was complete
 * @param concessionBound the least concessions that a further plan may have, packed; 0 where the search was complete
 * @param labels number of labels made
 */
public record StrokeAnswer(
        List<StrokePlan> plans, int proven, boolean complete, long costBound, long concessionBound, long labels) {
    public StrokeAnswer {
        plans = List.copyOf(plans);
        if (proven < 0 || proven > plans.size())
            throw new IllegalArgumentException("proven is " + proven + "; allowed: 0 to " + plans.size());
    }

    /**
     * How much dearer than the best possible a plan may be: 0 for a proven one, otherwise its distance to the bound.
     * Means something only where the plan concedes no more than {@link #concessionBound}.
     */
    public long gap(int plan) {
        return plan < proven ? 0 : Math.max(0, plans.get(plan).cost() - costBound);
    }
}
