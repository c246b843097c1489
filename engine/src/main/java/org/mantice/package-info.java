/**
 * The front door: {@link org.mantice.Planner} takes a {@link org.mantice.PlanRequest} and gives
 * {@link org.mantice.Alternatives}; nothing else is needed for a first run. May depend on every package of the engine
 * but those that read and write files.
 */
package org.mantice;
