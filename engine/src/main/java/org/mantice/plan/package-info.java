/**
 * The answer: a plan per layer, its cost, its explanation, locks, and differences between two plans. Start at
 * {@link org.mantice.plan.Plan}. Depends on {@code performance}, {@code instrument}, {@code player} and {@code rule}.
 */
package org.mantice.plan;
