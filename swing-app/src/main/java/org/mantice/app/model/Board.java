package org.mantice.app.model;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;
import org.mantice.plan.Plan;

/** The one state, and who is told of its changes. Whatever changes, the differences follow. */
final class Board {
    private final List<Consumer<PlannerState>> listeners = new ArrayList<>();
    private PlannerState state;
    private Inside inside = Inside.NEW;

    Board(Setup setup) {
        state = new PlannerState(
                Optional.empty(),
                Optional.empty(),
                setup,
                new Answer.Nothing(),
                Optional.empty(),
                List.of(),
                -1,
                List.of(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                new Reading.AsWritten(),
                EnumSet.allOf(Strip.class),
                Optional.empty(),
                Optional.empty(),
                false,
                List.of());
    }

    PlannerState state() {
        return state;
    }

    Inside inside() {
        return inside;
    }

    void addListener(Consumer<PlannerState> listener) {
        listeners.add(listener);
    }

    void removeListener(Consumer<PlannerState> listener) {
        listeners.remove(listener);
    }

    Listening listeningDuring(Runnable work) {
        List<Consumer<PlannerState>> before = List.copyOf(listeners);
        work.run();
        List<Consumer<PlannerState>> added = new ArrayList<>(listeners);
        added.removeAll(before);
        return new Listening(this, added);
    }

    void change(Consumer<Draft> edit) {
        Draft draft = new Draft(state, inside);
        edit.accept(draft);
        compare(draft);
        inside = draft.inside();
        PlannerState changed = draft.state();
        if (changed.equals(state)) return;
        state = changed;
        // A listener may change the state again: the later ones are then told of the last.
        for (Consumer<PlannerState> listener : List.copyOf(listeners)) listener.accept(state);
    }

    private void compare(Draft draft) {
        if (comparedPlans(draft.offers(), draft.compared).equals(comparedPlans(state.offers(), state.compared()))
                && draft.performance.equals(state.performance())) return;
        Optional<Difference> at = draft.differenceAt.isPresent()
                ? Optional.of(state.differences().get(draft.differenceAt.getAsInt()))
                : Optional.empty();
        List<Plan> plans = comparedPlans(draft.offers(), draft.compared);
        draft.differences = draft.performance
                .map(played -> Differences.between(plans, played))
                .orElse(List.of());
        draft.differenceAt = at.map(old -> indexOf(old, draft.differences)).orElse(OptionalInt.empty());
    }

    private static List<Plan> comparedPlans(List<Offer> offers, List<Integer> compared) {
        return compared.stream().map(i -> offers.get(i).plan()).toList();
    }

    private static OptionalInt indexOf(Difference old, List<Difference> differences) {
        for (int i = 0; i < differences.size(); i++)
            if (differences.get(i).kind() == old.kind()
                    && differences.get(i).spot().equals(old.spot())) return OptionalInt.of(i);
        return OptionalInt.empty();
    }
}
