package org.mantice;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.mantice.layer.RuleBook;
import org.mantice.plan.Plan;
import org.mantice.rule.RuleProvider;

/**
 * Plans tunes: registers and octaves, then the left hand, then the bellows, then the right hand. Each layer is exact
 * given the layers before it; the whole is their composition.
 */
public final class Planner {
    private final RuleBook book;

    /** @param packs the rules in force, as a rule {@link org.mantice.plugin.Packs#providers()} */
    public Planner(List<? extends RuleProvider> packs) {
        this(RuleBook.of(packs));
    }

    public Planner(RuleBook book) {
        this.book = book;
    }

    public RuleBook rules() {
        return book;
    }

    /**
     * The best plan and its alternatives.
     *
     * @throws org.mantice.layer.RuleFailureException if a rule throws or gives a number that is not allowed
     * @throws org.mantice.fault.ManticeException if the tune as played exceeds the stated limits
     */
    public Alternatives plan(PlanRequest request) {
        return plan(request, plan -> {}, () -> false);
    }

    /**
     * The same, telling of every plan as soon as it is found.
     *
     * @param found takes the best plan first, then each alternative; on the calling thread
     * @param cancelled asked now and then; once true, {@link java.util.concurrent.CancellationException} is thrown
     */
    public Alternatives plan(PlanRequest request, Consumer<Plan> found, BooleanSupplier cancelled) {
        return prepare(request)
                .alternatives(request.player().taste(), request.locks(), request.alternatives(), found, cancelled);
    }

    /** Reads the request once, so that many questions can be asked of it. */
    public Planning prepare(PlanRequest request) {
        return new Planning(request, book);
    }
}
