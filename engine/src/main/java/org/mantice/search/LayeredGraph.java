package org.mantice.search;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * A layered lattice: stages 0 to n-1 (n at least 1), each with numbered states that have a cost, and between
 * neighbouring stages a {@link Transition}. A path takes one state of every stage; its cost is the sum of its node and
 * edge costs.
 *
 * <p>Costs are whole numbers, 0 or more. A graph whose dearest conceivable path (the dearest node and edge of every
 * stage together) exceeds {@link #LARGEST_TOTAL} is refused, so no search can overflow. Nodes and edges may carry
 * concessions, see {@link ConcessionScale}. Immutable.
 */
public final class LayeredGraph {
    /** The largest total a path may have: a quarter of the range of {@code long}. */
    public static final long LARGEST_TOTAL = Long.MAX_VALUE / 4;

    final long[][] nodeCost;
    /** Packed concessions per stage and state; null for a stage without any. */
    final long[][] nodeConcessions;

    final Transition[] transition;
    /** Index of the first state of every stage among all states, and one last entry: the number of states. */
    final int[] offset;

    private final ConcessionScale scale;
    private final boolean conceding;

    private LayeredGraph(long[][] nodeCost, long[][] nodeConcessions, Transition[] transition, ConcessionScale scale) {
        this.nodeCost = nodeCost;
        this.nodeConcessions = nodeConcessions;
        this.transition = transition;
        this.scale = scale;
        this.offset = offsets(nodeCost);
        this.conceding = checkConcessions();
        checkTotal();
    }

    /** Starts a graph whose concessions have one level. */
    public static Builder builder() {
        return builder(new ConcessionScale(1));
    }

    public static Builder builder(ConcessionScale scale) {
        return new Builder(scale);
    }

    /** Whether any path is left within a restriction; costs aside, so cheaper than to look for the best. */
    public boolean hasPath(Restriction restriction) {
        return Reachability.firstBlockedStage(this, restriction).isEmpty();
    }

    public int stages() {
        return nodeCost.length;
    }

    public int states(int stage) {
        return nodeCost[stage].length;
    }

    /** The number of states of all stages. */
    public int states() {
        return offset[stages()];
    }

    public long nodeCost(int stage, int state) {
        return nodeCost[stage][state];
    }

    /** Packed concessions of a state. */
    public long nodeConcessions(int stage, int state) {
        return nodeConcessions[stage] == null ? ConcessionScale.NONE : nodeConcessions[stage][state];
    }

    /** The moves from {@code stage} (0 to n-2) to the next. */
    public Transition transition(int stage) {
        return transition[stage];
    }

    public ConcessionScale scale() {
        return scale;
    }

    /** Whether any node or edge carries a concession. */
    public boolean hasConcessions() {
        return conceding;
    }

    /**
     * The same lattice at other costs, concessions kept as the given transitions have them.
     *
     * @param nodeCosts costs of every stage's states
     * @param transitions transitions of the same shape, as a rule made by {@link Transition#withCosts}
     * @throws IllegalArgumentException if the shape differs or a cost is refused
     */
    public LayeredGraph withCosts(List<long[]> nodeCosts, List<Transition> transitions) {
        if (nodeCosts.size() != stages())
            throw new IllegalArgumentException("nodeCosts has " + nodeCosts.size() + " stages; allowed: " + stages());
        if (transitions.size() != stages() - 1)
            throw new IllegalArgumentException(
                    "transitions has " + transitions.size() + " entries; allowed: " + (stages() - 1));
        long[][] nodes = new long[stages()][];
        for (int stage = 0; stage < nodes.length; stage++) {
            if (nodeCosts.get(stage).length != states(stage))
                throw new IllegalArgumentException("nodeCosts of stage " + stage + " has " + nodeCosts.get(stage).length
                        + " states; allowed: " + states(stage));
            nodes[stage] = checkedNodes(stage, nodeCosts.get(stage));
            if (stage + 1 < nodes.length && !transitions.get(stage).sameShape(transition[stage]))
                throw new IllegalArgumentException("transition of stage " + stage + " is " + transitions.get(stage)
                        + "; allowed: the moves of " + transition[stage]);
        }
        return new LayeredGraph(nodes, nodeConcessions, transitions.toArray(Transition[]::new), scale);
    }

    /**
     * The cost of a given sequence of states, or empty where a move of it is impossible.
     *
     * @param states one state for every stage
     */
    public OptionalLong cost(int... states) {
        if (!isPath(states)) return OptionalLong.empty();
        long total = 0;
        for (int stage = 0; stage < states.length; stage++) {
            total += nodeCost[stage][states[stage]];
            if (stage == 0) continue;
            Transition before = transition[stage - 1];
            total += before.cost(before.edge(states[stage - 1], states[stage]));
        }
        return OptionalLong.of(total);
    }

    /** The packed concessions of a given sequence of states, or empty where a move of it is impossible. */
    public OptionalLong concessions(int... states) {
        if (!isPath(states)) return OptionalLong.empty();
        long total = ConcessionScale.NONE;
        for (int stage = 0; stage < states.length; stage++) {
            total = scale.add(total, nodeConcessions(stage, states[stage]));
            if (stage == 0) continue;
            Transition before = transition[stage - 1];
            total = scale.add(total, before.concessions(before.edge(states[stage - 1], states[stage])));
        }
        return OptionalLong.of(total);
    }

    private boolean isPath(int[] states) {
        if (states.length != stages())
            throw new IllegalArgumentException("states has " + states.length + " entries; allowed: " + stages());
        for (int stage = 0; stage < states.length; stage++) {
            checkState(stage, states[stage]);
            if (stage > 0 && transition[stage - 1].edge(states[stage - 1], states[stage]) < 0) return false;
        }
        return true;
    }

    void checkState(int stage, int state) {
        if (stage < 0 || stage >= stages())
            throw new IllegalArgumentException("stage is " + stage + "; allowed: 0 to " + (stages() - 1));
        if (state < 0 || state >= states(stage))
            throw new IllegalArgumentException(
                    "state of stage " + stage + " is " + state + "; allowed: 0 to " + (states(stage) - 1));
    }

    @Override
    public String toString() {
        return "LayeredGraph[" + stages() + " stages, " + states() + " states]";
    }

    private void checkTotal() {
        long total = 0;
        try {
            for (int stage = 0; stage < nodeCost.length; stage++) {
                long largest = 0;
                for (long cost : nodeCost[stage]) largest = Math.max(largest, cost);
                total = Math.addExact(total, largest);
                if (stage < transition.length) total = Math.addExact(total, transition[stage].largestCost());
            }
        } catch (ArithmeticException overflow) {
            total = Long.MAX_VALUE;
        }
        if (total > LARGEST_TOTAL)
            throw new IllegalArgumentException(
                    "the largest costs of all stages sum to " + total + "; allowed: 0 to " + LARGEST_TOTAL);
    }

    private boolean checkConcessions() {
        boolean any = false;
        for (int stage = 0; stage < nodeCost.length; stage++) {
            if (nodeConcessions[stage] != null) {
                any = true;
                for (long packed : nodeConcessions[stage]) scale.check(packed);
            }
            if (stage < transition.length && transition[stage].hasConcessions()) {
                any = true;
                for (long packed : transition[stage].concessions) scale.check(packed);
            }
        }
        return any;
    }

    private static int[] offsets(long[][] nodes) {
        int[] offset = new int[nodes.length + 1];
        for (int stage = 0; stage < nodes.length; stage++)
            offset[stage + 1] = Math.addExact(offset[stage], nodes[stage].length);
        return offset;
    }

    private static long[] checkedNodes(int stage, long[] costs) {
        long[] copy = costs.clone();
        for (int state = 0; state < copy.length; state++)
            if (copy[state] < 0)
                throw new IllegalArgumentException("cost of state " + state + " of stage " + stage + " is "
                        + copy[state] + "; allowed: 0 or more");
        return copy;
    }

    /** Takes stages and transitions in turn: stage, then transition and stage as often as wanted. */
    public static final class Builder {
        private final ConcessionScale scale;
        private final List<long[]> nodes = new ArrayList<>();
        private final List<long[]> concessions = new ArrayList<>();
        private final List<Transition> transitions = new ArrayList<>();

        private Builder(ConcessionScale scale) {
            this.scale = scale;
        }

        /** The first stage, with the cost of every state. */
        public Builder first(long... nodeCosts) {
            if (!nodes.isEmpty()) throw new IllegalStateException("the first stage is already there");
            return add(nodeCosts);
        }

        /**
         * The next stage, with the cost of every state, and the moves that lead to it.
         *
         * @throws IllegalArgumentException if the transition does not fit the stages it joins
         */
        public Builder next(Transition moves, long... nodeCosts) {
            if (nodes.isEmpty()) throw new IllegalStateException("there is no first stage yet");
            int sources = nodes.get(nodes.size() - 1).length;
            if (moves.sources() != sources || moves.targets() != nodeCosts.length)
                throw new IllegalArgumentException("transition to stage " + nodes.size() + " joins " + moves.sources()
                        + " and " + moves.targets() + " states; allowed: " + sources + " and " + nodeCosts.length);
            transitions.add(moves);
            return add(nodeCosts);
        }

        /** What gives way if a state of the stage just added is taken: one packed value for every state. */
        public Builder conceding(long... packed) {
            if (nodes.isEmpty()) throw new IllegalStateException("there is no stage yet");
            int last = nodes.size() - 1;
            if (packed.length != nodes.get(last).length)
                throw new IllegalArgumentException("concessions of stage " + last + " has " + packed.length
                        + " entries; allowed: " + nodes.get(last).length);
            concessions.set(last, packed.clone());
            return this;
        }

        private Builder add(long[] nodeCosts) {
            nodes.add(checkedNodes(nodes.size(), nodeCosts));
            concessions.add(null);
            return this;
        }

        public LayeredGraph build() {
            if (nodes.isEmpty()) throw new IllegalArgumentException("stages is 0; allowed: 1 or more");
            return new LayeredGraph(
                    nodes.toArray(long[][]::new),
                    concessions.toArray(long[][]::new),
                    transitions.toArray(Transition[]::new),
                    scale);
        }
    }
}
