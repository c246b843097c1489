package org.mantice.app.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.mantice.layer.RuleFailureException;
import org.mantice.performance.Performance;
import org.mantice.plan.Plan;
import org.mantice.player.Taste;
import org.mantice.plugin.RuleStuckException;

/** Turns what is told of a planning into the answer in view. */
final class Answering implements PlanningDesk.Listener {
    private static final int MOST_OFFERS = 12;

    private final Board board;
    private final Runnable settled;
    private final List<Offer> fresh = new ArrayList<>();
    private Optional<Made> making = Optional.empty();
    private Optional<Performance> performance = Optional.empty();
    private Optional<Report.Rated> saved = Optional.empty();

    /** @param settled called when an answer is complete */
    Answering(Board board, Runnable settled) {
        this.board = board;
        this.settled = settled;
    }

    static String letter(int index) {
        return String.valueOf((char) ('A' + index));
    }

    /** The offers in view stay until there are new ones; they cost what they cost under the weights of now. */
    void begin(Draft draft, Made made) {
        making = Optional.of(made);
        performance = Optional.empty();
        saved = Optional.empty();
        fresh.clear();
        Taste taste = made.setup().player().taste();
        List<Offer> before = draft.offers().stream()
                .map(offer -> new Offer(
                        offer.letter(),
                        offer.plan(),
                        offer.figures(),
                        offer.plan().cost(taste)))
                .toList();
        draft.answer = new Answer.Working(before, 0, asked());
    }

    private int asked() {
        return making.orElseThrow().setup().wishes().plans();
    }

    private Taste taste() {
        return making.orElseThrow().setup().player().taste();
    }

    private Offer offer(int index, Report.Rated rated) {
        return new Offer(
                letter(index), rated.plan(), rated.figures(), rated.plan().cost(taste()));
    }

    @Override
    public void report(Report report) {
        if (report instanceof Report.Prepared prepared) prepared(prepared.performance());
        else if (report instanceof Report.Reopened reopened) reopened(reopened.saved());
        else if (report instanceof Report.Retouched retouched) board.change(draft -> retouched(draft, retouched));
        else if (report instanceof Report.Found found) found(found.plan());
        else if (report instanceof Report.Complete complete) complete(complete.plans());
        else if (report instanceof Report.NotPlayable none)
            end(draft -> new Answer.NotPlayable(draft.offers(), none.obstacles()));
    }

    /** Without offers there is nothing that the tune as played would have to fit. */
    private void prepared(Performance played) {
        performance = Optional.of(played);
        board.change(draft -> {
            if (draft.offers().isEmpty()) draft.perform(played);
        });
    }

    private void reopened(Report.Rated plan) {
        saved = Optional.of(plan);
        board.change(draft -> draft.picks = draft.picks.choosing(plan.plan()));
        found(plan);
    }

    /** In place of the plan that it was, if that is still in view. */
    private void retouched(Draft draft, Report.Retouched news) {
        OptionalInt there = Likeness.find(draft.offers(), news.before());
        if (there.isEmpty()) return;
        List<Offer> offers = new ArrayList<>(draft.offers());
        Plan plan = news.after().plan();
        String letter = offers.get(there.getAsInt()).letter();
        offers.set(there.getAsInt(), new Offer(letter, plan, news.after().figures(), plan.cost(taste())));
        draft.picks = draft.picks.changed(news.before(), plan);
        draft.answer = new Answer.Working(offers, 0, asked());
        draft.made = making;
    }

    private void found(Report.Rated rated) {
        if (saved.isPresent() && Likeness.find(fresh, rated.plan()).isPresent()) return;
        fresh.add(offer(fresh.size(), rated));
        board.change(draft -> show(draft, new Answer.Working(fresh, fresh.size(), asked())));
    }

    private void show(Draft draft, Answer answer) {
        draft.answer = answer;
        draft.perform(performance.orElseThrow());
        draft.made = making;
        draft.pick();
    }

    private void complete(List<Report.Rated> plans) {
        List<Report.Rated> all = new ArrayList<>(plans);
        saved.ifPresent(kept -> keep(kept, all));
        List<Offer> offers = new ArrayList<>();
        for (Report.Rated rated : all.subList(0, Math.min(all.size(), MOST_OFFERS)))
            offers.add(offer(offers.size(), rated));
        board.change(draft -> {
            show(draft, new Answer.Ready(offers, asked()));
            draft.picks = draft.picks.settled(offers);
        });
        settled.run();
    }

    /** Among the others by its cost, in place of one that decides the same; the dearest other one makes room. */
    private void keep(Report.Rated kept, List<Report.Rated> all) {
        all.removeIf(other -> Likeness.same(other.plan(), kept.plan()));
        if (all.size() == MOST_OFFERS) all.remove(MOST_OFFERS - 1);
        all.add(kept);
        all.sort(Comparator.comparingLong((Report.Rated rated) -> rated.plan().cost(taste())));
    }

    @Override
    public void failed(Throwable cause) {
        end(draft -> new Answer.Failed(draft.offers(), cause, ruleOf(cause)));
    }

    void stopped() {
        end(draft -> new Answer.Stopped(draft.offers()));
    }

    private void end(Function<Draft, Answer> answer) {
        board.change(draft -> {
            draft.answer = answer.apply(draft);
            draft.picks = draft.picks.settled(draft.offers());
        });
        settled.run();
    }

    /** A question beside the planning failed, or what is wished cannot be asked at all. */
    @Override
    public void refused(Throwable cause) {
        board.change(draft -> draft.answer = new Answer.Failed(draft.offers(), cause, ruleOf(cause)));
    }

    private static String ruleOf(Throwable cause) {
        if (cause instanceof RuleFailureException failure) return failure.ruleId();
        return cause instanceof RuleStuckException stuck ? stuck.ruleId() : "";
    }
}
