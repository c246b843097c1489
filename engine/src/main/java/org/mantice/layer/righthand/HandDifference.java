package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.plan.RightHandPlan;
import org.mantice.search.PathDifference;

/**
 * Counts named decisions in which a path differs from a plan: at each moment one for another finger, and one for a
 * change of hand place that only one of the two makes.
 */
final class HandDifference implements PathDifference {
    private final HandLattice lattice;
    private final List<List<Integer>> fingers = new ArrayList<>();
    private final List<Boolean> changes = new ArrayList<>();

    HandDifference(HandLattice lattice, RightHandPlan plan) {
        this.lattice = lattice;
        if (plan.events().size() != lattice.stages())
            throw new IllegalArgumentException("plan has " + plan.events().size() + " events; allowed: one for each of "
                    + lattice.stages() + " moments");
        for (int index = 0; index < lattice.stages(); index++) {
            RightHandPlan.Event event = plan.events().get(index);
            fingers.add(event.fingers());
            changes.add(index > 0
                    && event.handPlace() != plan.events().get(index - 1).handPlace());
        }
    }

    @Override
    public int state(int stage, int state) {
        Posture posture = lattice.posture(stage, state);
        int count = posture.fingers().equals(fingers.get(stage)) ? 0 : 1;
        if (stage == 0) return count;
        int before = lattice.postures(stage - 1)
                .get(lattice.postureBefore(stage, state))
                .place();
        return (posture.place() != before) == changes.get(stage) ? count : count + 1;
    }
}
