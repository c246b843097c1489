package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.layer.Choice;
import org.mantice.plan.Decision;
import org.mantice.search.BestThrough;
import org.mantice.search.Path;
import org.mantice.search.Score;
import org.mantice.tune.WrittenPlace;

/** What each finger and hand place at a place would cost; of choices that make more bans give way, none is offered. */
final class HandChoices {
    private final HandLattice lattice;
    private final BestThrough through;
    private final Path best;
    private final Map<Decision, Long> extra = new LinkedHashMap<>();

    HandChoices(HandLattice lattice, BestThrough through, Path best) {
        this.lattice = lattice;
        this.through = through;
        this.best = best;
    }

    void add(int stage, int pass, WrittenPlace place) {
        for (int state = 0; state < lattice.states(stage); state++) {
            Optional<Score> score = through.state(stage, state);
            if (score.isEmpty() || score.get().concessions() != best.concessions()) continue;
            long dearer = score.get().cost() - best.cost();
            Posture posture = lattice.posture(stage, state);
            for (int note = 0; note < posture.fingers().size(); note++)
                keep(
                        new Decision(
                                Decision.Kind.FINGER,
                                pass,
                                place,
                                note,
                                posture.fingers().get(note).toString()),
                        dearer);
            keep(new Decision(Decision.Kind.HAND_PLACE, pass, place, 0, Integer.toString(posture.place())), dearer);
        }
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
