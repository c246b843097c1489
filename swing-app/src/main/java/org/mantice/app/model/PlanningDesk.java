package org.mantice.app.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.layer.RuleBook;
import org.mantice.plugin.Packs;
import org.mantice.plugin.RuleStuckException;

/**
 * Keeps the one planning that questions are put to, and has the background answer them. The planning stays while only
 * weights and locks change.
 */
final class PlanningDesk {
    /** Told on the asking thread; of a search that was given up, nothing. */
    interface Listener {
        void report(Report report);

        void failed(Throwable cause);

        /** A question beside the search failed. */
        void refused(Throwable cause);
    }

    /** A planning that is prepared when it is first needed, in the background, and only used there. */
    private static final class Kept {
        private final Basis basis;
        private final RuleBook rules;
        private Optional<Planning> planning = Optional.empty();

        Kept(Basis basis, RuleBook rules) {
            this.basis = basis;
            this.rules = rules;
        }

        Planning planning() {
            if (planning.isEmpty())
                planning = Optional.of(new Planner(rules)
                        .prepare(new PlanRequest(
                                basis.tune(),
                                basis.accordion(),
                                basis.hand(),
                                basis.settings(),
                                List.of(),
                                Wishes.USUAL_PLANS)));
            return planning.get();
        }
    }

    private final Background background;
    private final RulesInForce rules;
    private final RuleWatch watch;
    private final Listener listener;
    private final Set<Background.Running> underWay = new LinkedHashSet<>();
    private Optional<Kept> kept = Optional.empty();
    private Optional<Background.Running> search = Optional.empty();

    /** @param patienceSeconds how long a rule from a jar is waited for */
    PlanningDesk(Packs packs, Background background, int patienceSeconds, Listener listener) {
        this.background = background;
        this.rules = new RulesInForce(packs);
        this.watch = new RuleWatch(packs, background, patienceSeconds, this::giveUp);
        this.listener = listener;
    }

    RulesInForce rules() {
        return rules;
    }

    /** Whatever waits would ask the planning that the lost thread may still be in. */
    private void giveUp(RuleStuckException stuck) {
        rules.turnOff(stuck.packId());
        kept = Optional.empty();
        stopSearch();
        for (Background.Running waiting : List.copyOf(underWay)) waiting.cancel();
        background.abandon();
        listener.failed(stuck);
    }

    private Kept kept(Basis basis) {
        Kept wanted = kept.filter(one -> one.basis.equals(basis))
                .orElseGet(() -> new Kept(basis, rules.without(basis.leftOut())));
        kept = Optional.of(wanted);
        return wanted;
    }

    /** Searches for plans; a search under way is given up. */
    void search(Order order) {
        stopSearch();
        Ticket ticket = new Ticket();
        search = Optional.of(ticket);
        this.<Report, Report>start(
                ticket,
                order.basis(),
                (planning, reports, cancelled) -> new PlanningWork(planning, order, reports, cancelled).run(),
                listener::report,
                listener::report,
                listener::failed);
    }

    void stopSearch() {
        search.ifPresent(Background.Running::cancel);
        search = Optional.empty();
    }

    /**
     * Asks something of a planning.
     *
     * @param answer computes it in the background
     */
    <R> Background.Running ask(Basis basis, BiFunction<Planning, BooleanSupplier, R> answer, Consumer<R> done) {
        Ticket ticket = new Ticket();
        this.<R, R>start(
                ticket,
                basis,
                (planning, news, cancelled) -> answer.apply(planning, cancelled),
                news -> {},
                done,
                listener::refused);
        return ticket;
    }

    private interface Work<I, R> {
        R run(Planning planning, Consumer<I> interim, BooleanSupplier cancelled);
    }

    private <I, R> void start(
            Ticket ticket,
            Basis basis,
            Work<I, R> work,
            Consumer<I> interim,
            Consumer<R> done,
            Consumer<Throwable> failed) {
        Kept planning = kept(basis);
        ticket.running = background.<I, R>start(
                (news, cancelled) -> {
                    ticket.guard.begin();
                    try {
                        return work.run(planning.planning(), news, cancelled);
                    } finally {
                        ticket.guard.end();
                    }
                },
                news -> ticket.ifWanted(() -> interim.accept(news)),
                result -> ticket.last(() -> done.accept(result)),
                cause -> ticket.last(() -> failed.accept(cause)));
    }

    /** Work under way; what comes back after it was cancelled is dropped here too. */
    private final class Ticket implements Background.Running {
        private final RuleWatch.Guard guard = watch.guard();
        private Background.Running running = () -> {};
        private boolean wanted = true;

        Ticket() {
            underWay.add(this);
        }

        void ifWanted(Runnable news) {
            if (wanted) news.run();
        }

        void last(Runnable news) {
            underWay.remove(this);
            ifWanted(news);
        }

        @Override
        public void cancel() {
            wanted = false;
            underWay.remove(this);
            running.cancel();
            guard.dismiss();
        }
    }
}
