package org.mantice.app.model;

import java.util.List;
import org.mantice.performance.Performance;
import org.mantice.plan.Figures;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Plan;

/** What is told of a planning under way, in the order of the cases. */
sealed interface Report {
    /** A plan with its figures. */
    record Rated(Plan plan, Figures figures) {}

    record Prepared(Performance performance) implements Report {}

    /** The saved plan at today's prices. */
    record Reopened(Rated saved) implements Report {}

    /** A plan with the touched layers changed. */
    record Retouched(Plan before, Rated after) implements Report {}

    record Found(Rated plan) implements Report {}

    /** The end: all plans, in order of cost. */
    record Complete(List<Rated> plans) implements Report {}

    /** The end: none. */
    record NotPlayable(List<Obstacle> obstacles) implements Report {}
}
