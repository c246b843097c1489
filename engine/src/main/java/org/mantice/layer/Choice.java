package org.mantice.layer;

import org.mantice.plan.Decision;

/**
 * What else could have been decided at a place.
 *
 * @param decision with its value
 * @param extraCost micropoints by which the best plan with this decision is dearer than the best of all; 0 for the
 *     best plan's own decision
 */
public record Choice(Decision decision, long extraCost) {}
