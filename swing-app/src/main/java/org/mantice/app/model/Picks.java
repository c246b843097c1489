package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.plan.Plan;

/**
 * Which plans the player has picked, so that they are found again among other offers.
 *
 * @param chosen the first of these that is there; empty while the player has chosen none
 * @param compared empty while the player has picked none
 * @param selected in which something is selected
 */
record Picks(List<Plan> chosen, List<Plan> compared, Optional<Plan> selected) {
    static final Picks NONE = new Picks(List.of(), List.of(), Optional.empty());

    private static final int COMPARED_AT_FIRST = 2;

    Picks {
        chosen = List.copyOf(chosen);
        compared = List.copyOf(compared);
    }

    Picks choosing(Plan plan) {
        return new Picks(List.of(plan), compared, selected);
    }

    Picks comparing(List<Plan> plans) {
        return new Picks(chosen, plans, selected);
    }

    Picks selecting(Optional<Plan> plan) {
        return new Picks(chosen, compared, plan);
    }

    /** The same for a plan that changed: it counts wherever the other does. */
    Picks changed(Plan before, Plan after) {
        List<Plan> both = new ArrayList<>(chosen);
        if (chosen.stream().anyMatch(plan -> Likeness.same(plan, before))) both.add(after);
        return new Picks(
                both,
                compared.stream()
                        .map(plan -> Likeness.same(plan, before) ? after : plan)
                        .toList(),
                selected.map(plan -> Likeness.same(plan, before) ? after : plan));
    }

    /** -1 without offers. */
    int chosenAmong(List<Offer> offers) {
        if (offers.isEmpty()) return -1;
        for (Plan plan : chosen) {
            OptionalInt there = Likeness.find(offers, plan);
            if (there.isPresent()) return there.getAsInt();
        }
        for (Plan plan : chosen)
            for (int i = 0; i < offers.size(); i++)
                if (offers.get(i).plan().label().equals(plan.label())) return i;
        return 0;
    }

    /** As many as the player has picked, or two, where there are so many; ascending. */
    List<Integer> comparedAmong(List<Offer> offers) {
        List<Integer> found = new ArrayList<>();
        for (Plan plan : compared)
            Likeness.find(offers, plan).ifPresent(i -> {
                if (!found.contains(i)) found.add(i);
            });
        int wanted = compared.isEmpty() ? COMPARED_AT_FIRST : compared.size();
        for (int i = 0; i < offers.size() && found.size() < wanted; i++) if (!found.contains(i)) found.add(i);
        return found.stream().sorted().toList();
    }

    OptionalInt selectedAmong(List<Offer> offers) {
        return selected.map(plan -> Likeness.find(offers, plan)).orElse(OptionalInt.empty());
    }

    /** The picks once a planning has ended: what is picked now is what is wanted from now on. */
    Picks settled(List<Offer> offers) {
        if (offers.isEmpty()) return this;
        List<Plan> plans = offers.stream().map(Offer::plan).toList();
        return new Picks(
                chosen.isEmpty() ? chosen : List.of(plans.get(chosenAmong(offers))),
                compared.isEmpty()
                        ? compared
                        : comparedAmong(offers).stream().map(plans::get).toList(),
                selected);
    }
}
