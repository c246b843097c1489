package org.mantice.search;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.mantice.search.DifferentPath.Requirement;

/**
 * The edges of a lattice that lie on a path within a cost limit and conceding no more than the best, in one run of
 * arrays, each with the differences it brings (its source state's included). A last edge leads from every state of the
 * last stage to nowhere.
 */
final class CountedEdges {
    final LayeredGraph graph;
    final long leastConcessions;
    /** Whether a first state may start a path that concedes no more than the best. */
    final boolean[] mayStart;
    /** First edge of every state, and one last entry: the number of edges. */
    final int[] start;
    /** State, among all states, that an edge leads to; -1 after the last stage. */
    int[] target = new int[1024];
    /** Cost of an edge and of its source state. */
    long[] cost = new long[1024];
    /** By requirement and edge; at most what the requirement asks for. */
    final byte[][] brings;

    private final List<Requirement> requirements;
    /** By requirement: the differences that the state at hand brings to each of its edges. */
    private final int[] ofState;

    private int edges;

    CountedEdges(ShortestPaths paths, List<Requirement> requirements, long limit, BooleanSupplier cancelled) {
        this.graph = paths.graph();
        this.requirements = requirements;
        this.leastConcessions = paths.concessions().orElse(ConcessionScale.NONE);
        this.start = new int[graph.states() + 1];
        this.ofState = new int[requirements.size()];
        this.brings = new byte[requirements.size()][1024];
        this.mayStart = mayStart(paths.toGo());
        BestThrough through = BestThrough.of(paths, cancelled);
        for (int stage = 0; stage < graph.stages(); stage++) {
            Cancellation.check(cancelled);
            for (int state = 0; state < graph.states(stage); state++) {
                start[graph.offset[stage] + state] = edges;
                if (!paths.toGo().reachesEnd(stage, state)) continue;
                for (int index = 0; index < ofState.length; index++)
                    ofState[index] =
                            checked(requirements.get(index).difference().state(stage, state));
                if (stage == graph.stages() - 1) add(stage, state, -1, 0);
                else addEdges(through, stage, state, limit);
            }
        }
        start[graph.states()] = edges;
    }

    int states() {
        return graph.states();
    }

    /** The path from a first state that takes these edges. */
    Path path(int firstState, int[] edgeByStage) {
        int[] states = new int[graph.stages()];
        long total = 0;
        for (int stage = 0, state = firstState; stage < states.length; stage++) {
            states[stage] = state;
            int edge = edgeByStage[stage];
            total += cost[edge];
            if (stage + 1 < states.length) state = target[edge] - graph.offset[stage + 1];
        }
        return new Path(states, total, leastConcessions);
    }

    private boolean[] mayStart(CostToGo toGo) {
        boolean[] may = new boolean[graph.states(0)];
        for (int state = 0; state < may.length; state++)
            may[state] = toGo.reachesEnd(0, state)
                    && (toGo.concessions == null || toGo.concessions[0][state] == leastConcessions);
        return may;
    }

    private void addEdges(BestThrough through, int stage, int state, long limit) {
        Transition moves = graph.transition[stage];
        for (int edge = moves.start[state]; edge < moves.start[state + 1]; edge++)
            if (through.isWithin(stage, state, edge, leastConcessions, limit))
                add(stage, state, moves.target[edge], moves.cost[edge]);
    }

    private void add(int stage, int state, int to, long edgeCost) {
        if (edges == target.length) grow();
        target[edges] = to < 0 ? -1 : graph.offset[stage + 1] + to;
        cost[edges] = edgeCost + graph.nodeCost[stage][state];
        for (int index = 0; index < brings.length; index++) {
            PathDifference difference = requirements.get(index).difference();
            int count = ofState[index];
            if (to >= 0) count = Math.addExact(count, checked(difference.move(stage, state, to)));
            brings[index][edges] =
                    (byte) Math.min(count, requirements.get(index).least());
        }
        edges++;
    }

    private static int checked(int count) {
        if (count < 0) throw new IllegalArgumentException("difference is " + count + "; allowed: 0 or more");
        return count;
    }

    private void grow() {
        int more = edges + (edges >> 1);
        target = Arrays.copyOf(target, more);
        cost = Arrays.copyOf(cost, more);
        for (int index = 0; index < brings.length; index++) brings[index] = Arrays.copyOf(brings[index], more);
    }
}
