package org.mantice.app.model;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.mantice.Alternatives;
import org.mantice.Planning;
import org.mantice.performance.Performance;
import org.mantice.plan.Figures;
import org.mantice.plan.Plan;
import org.mantice.rule.RuleSet;

/** Carries out an order on a prepared planning, in the background. */
final class PlanningWork {
    private final Planning planning;
    private final Performance performance;
    private final Order order;
    private final Consumer<Report> reports;
    private final BooleanSupplier cancelled;
    private final Map<Plan, Report.Rated> rated = new IdentityHashMap<>();

    PlanningWork(Planning planning, Order order, Consumer<Report> reports, BooleanSupplier cancelled) {
        this.planning = planning;
        this.performance = planning.performance();
        this.order = order;
        this.reports = reports;
        this.cancelled = cancelled;
    }

    /** The last report; the others are told on the way. */
    Report run() {
        reports.accept(new Report.Prepared(performance));
        order.saved().ifPresent(plan -> reports.accept(new Report.Reopened(rated(planning.rescore(plan)))));
        order.retouch().ifPresent(before -> retouched(before)
                .ifPresent(after -> reports.accept(new Report.Retouched(before, rated(after)))));
        Alternatives answer = planning.alternatives(
                order.taste(),
                order.locks(),
                order.plans(),
                plan -> reports.accept(new Report.Found(rated(plan))),
                cancelled);
        if (answer instanceof Alternatives.NotPlayable none) return new Report.NotPlayable(none.obstacles());
        List<Report.Rated> plans = new ArrayList<>();
        for (Plan plan : ((Alternatives.Found) answer).plans()) plans.add(rated(plan));
        return new Report.Complete(plans);
    }

    private Optional<Plan> retouched(Plan plan) {
        Optional<Plan> changed = Optional.of(plan);
        for (RuleSet layer : order.touched())
            changed = changed.flatMap(one -> planning.retouch(one, layer, order.taste(), order.locks(), cancelled));
        return changed;
    }

    private Report.Rated rated(Plan plan) {
        return rated.computeIfAbsent(plan, fresh -> new Report.Rated(fresh, Figures.of(fresh, performance)));
    }
}
