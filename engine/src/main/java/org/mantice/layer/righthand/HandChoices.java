package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.mantice.layer.Choice;
import org.mantice.plan.Decision;
import org.mantice.search.BestThrough;
import org.mantice.search.Path;
import org.mantice.search.Restriction;
import org.mantice.search.Score;
import org.mantice.search.ShortestPaths;
import org.mantice.tune.WrittenPlace;

/** What each finger and hand place at a place would cost; of choices that make more bans give way, none is offered. */
final class HandChoices {
    private final HandLattice lattice;
    private final Path best;
    private final int pass;
    private final WrittenPlace place;
    private final Map<Decision, Long> extra = new LinkedHashMap<>();

    HandChoices(HandLattice lattice, Path best, int pass, WrittenPlace place) {
        this.lattice = lattice;
        this.best = best;
        this.pass = pass;
        this.place = place;
    }

    /** Those of a place that is played once. */
    void add(int stage, BestThrough through) {
        for (int state = 0; state < lattice.states(stage); state++) {
            Optional<Score> score = through.state(stage, state);
            if (score.isEmpty() || score.get().concessions() != best.concessions()) continue;
            long dearer = score.get().cost() - best.cost();
            for (Decision decision : decisions(lattice.posture(stage, state))) keep(decision, dearer);
        }
    }

    /**
     * Those that can be had at all of several stages. One search for each: what is cheapest at each stage alone need not
     * be so together.
     */
    void add(List<Integer> stages, ShortestPaths paths, BooleanSupplier cancelled) {
        Set<Decision> all = new LinkedHashSet<>();
        for (int stage : stages) for (Posture posture : lattice.postures(stage)) all.addAll(decisions(posture));
        for (Decision decision : all) {
            Restriction restriction = paths.restriction();
            for (int stage : stages) restriction = restriction.allowing(stage, having(decision, stage));
            ShortestPaths.of(paths.graph(), restriction, cancelled)
                    .best()
                    .filter(path -> path.concessions() == best.concessions())
                    .ifPresent(path -> keep(decision, path.cost() - best.cost()));
        }
    }

    private BitSet having(Decision decision, int stage) {
        BitSet states = new BitSet();
        for (int state = 0; state < lattice.states(stage); state++)
            if (decisions(lattice.posture(stage, state)).contains(decision)) states.set(state);
        return states;
    }

    private List<Decision> decisions(Posture posture) {
        List<Decision> decisions = new ArrayList<>();
        for (int note = 0; note < posture.fingers().size(); note++)
            decisions.add(new Decision(
                    Decision.Kind.FINGER,
                    pass,
                    place,
                    note,
                    posture.fingers().get(note).toString()));
        decisions.add(new Decision(Decision.Kind.HAND_PLACE, pass, place, 0, Integer.toString(posture.place())));
        return decisions;
    }

    private void keep(Decision decision, long dearer) {
        extra.merge(decision, dearer, Math::min);
    }

    /** Ties by kind, note and value. */
    List<Choice> bestFirst() {
        List<Choice> choices = new ArrayList<>();
        extra.forEach((decision, dearer) -> choices.add(new Choice(decision, dearer)));
        choices.sort(Comparator.comparingLong(Choice::extraCost)
                .thenComparing(choice -> choice.decision().kind())
                .thenComparing(choice -> choice.decision().part())
                .thenComparing(choice -> choice.decision().value()));
        return List.copyOf(choices);
    }
}
