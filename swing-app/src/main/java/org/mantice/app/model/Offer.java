package org.mantice.app.model;

import org.mantice.plan.Figures;
import org.mantice.plan.Plan;

/**
 * A plan to compare.
 *
 * @param letter by which it is called, {@code "A"} to {@code "L"}: stays while others arrive
 * @param cost micropoints under the player's weights
 */
public record Offer(String letter, Plan plan, Figures figures, long cost) {}
