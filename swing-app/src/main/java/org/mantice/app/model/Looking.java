package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.performance.Performance;
import org.mantice.plan.Decision;
import org.mantice.plan.Plan;

/** What the player looks at: the selection with what is known of it, and the differences one after the other. */
final class Looking {
    private final Board board;
    private final PlanningDesk desk;
    private Background.Running asking = () -> {};

    Looking(Board board, PlanningDesk desk) {
        this.board = board;
        this.desk = desk;
    }

    void select(Optional<Selection> selection) {
        board.change(draft -> select(draft, selection));
        inquire();
    }

    private static void select(Draft draft, Optional<Selection> selection) {
        selection.ifPresent(wanted -> {
            if (wanted.offer() < 0 || wanted.offer() >= draft.offers().size())
                throw new IllegalArgumentException("offer of the selection is " + wanted.offer() + "; allowed: 0 to "
                        + (draft.offers().size() - 1));
        });
        if (selection.equals(draft.selection)) return;
        draft.selection = selection;
        draft.insight = Optional.empty();
        draft.picks = draft.picks.selecting(
                selection.map(wanted -> draft.offers().get(wanted.offer()).plan()));
    }

    /** Plans are searched for now, and nothing else. */
    void giveWay() {
        asking.cancel();
    }

    /** Asks about the selection anew, unless plans are being searched for: then that comes first. */
    void inquire() {
        asking.cancel();
        PlannerState state = board.state();
        if (state.selection().isEmpty()
                || state.isWorking()
                || board.inside().made().isEmpty()) return;
        Selection selection = state.selection().get();
        Made made = board.inside().made().get();
        Plan plan = state.offers().get(selection.offer()).plan();
        InsightFinder finder = new InsightFinder(
                selection,
                plan,
                state.setup().player().taste(),
                made.setup().locks(),
                state.setup().locks());
        asking = desk.ask(
                made.basis(),
                finder::find,
                found -> board.change(draft -> {
                    if (draft.selection.equals(Optional.of(selection))) draft.insight = Optional.of(found);
                }));
    }

    /** What the plan decides where something is selected; no turn is a decision too. Empty without a selection. */
    List<Decision> decisionsSelected() {
        PlannerState state = board.state();
        if (state.selection().isEmpty() || state.performance().isEmpty()) return List.of();
        Selection selection = state.selection().get();
        Spot spot = selection.spot();
        Plan plan = state.offers().get(selection.offer()).plan();
        List<Decision> here = InsightFinder.here(plan, state.performance().get(), spot);
        if (!here.isEmpty() || spot.strip() != Strip.BELLOWS) return here;
        return List.of(new Decision(Decision.Kind.TURN, spot.pass(), spot.place(), 0, Locks.NO_TURN));
    }

    /** @param by 1 for the next, -1 for the one before; round at the ends */
    void step(int by) {
        PlannerState state = board.state();
        int count = state.differences().size();
        if (count == 0) return;
        OptionalInt at = state.differenceAt();
        int start = by > 0 ? -1 : count;
        stepTo(Math.floorMod((at.isPresent() ? at.getAsInt() : start) + by, count));
    }

    void stepTo(int difference) {
        List<Difference> differences = board.state().differences();
        if (difference < 0 || difference >= differences.size())
            throw new IllegalArgumentException(
                    "difference is " + difference + "; allowed: 0 to " + (differences.size() - 1));
        Difference wanted = differences.get(difference);
        board.change(draft -> {
            draft.differenceAt = OptionalInt.of(difference);
            int offer = draft.selection
                    .map(Selection::offer)
                    .filter(draft.compared::contains)
                    .orElse(draft.compared.get(0));
            select(draft, Optional.of(new Selection(offer, wanted.spot())));
            draft.reading = reading(draft, wanted.spot().measure());
        });
        inquire();
    }

    /** As it is if it shows the played measure, else the sweep that does. */
    private static Reading reading(Draft draft, int measure) {
        Performance performance = draft.performance.orElseThrow();
        boolean shown = draft.reading.cells(performance).stream()
                .anyMatch(cell -> cell.played().equals(OptionalInt.of(measure)));
        if (shown) return draft.reading;
        List<Reading.Sweep> sweeps = Reading.sweeps(performance);
        for (int i = 0; i < sweeps.size(); i++)
            if (sweeps.get(i).firstPlayed() <= measure
                    && measure <= sweeps.get(i).lastPlayed()) return new Reading.OneSweep(i);
        return new Reading.AsPlayed();
    }
}
