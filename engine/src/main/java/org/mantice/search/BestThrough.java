package org.mantice.search;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The score of the best path through every state and by every edge of a lattice: least concessions, then least cost.
 * That answers "why not this?" everywhere at once. The path itself is {@link ShortestPaths#bestThrough}.
 *
 * <p>One forward pass beside the backward pass of {@link ShortestPaths}: O(edges) time, O(states) memory. Immutable.
 */
public final class BestThrough {
    private final LayeredGraph graph;
    private final CostToGo toGo;
    /** Least cost, and concessions, from the first stage to every state, the state's own included. */
    private final long[] cost;

    private final long[] concessions;

    private BestThrough(ShortestPaths paths, BooleanSupplier cancelled) {
        graph = paths.graph();
        toGo = paths.toGo();
        cost = new long[graph.states()];
        concessions = graph.hasConcessions() ? new long[graph.states()] : null;
        Arrays.fill(cost, CostToGo.UNREACHABLE);
        for (int state = 0; state < graph.states(0); state++) {
            if (!toGo.reachesEnd(0, state)) continue;
            cost[state] = graph.nodeCost[0][state];
            if (concessions != null) concessions[state] = graph.nodeConcessions(0, state);
        }
        for (int stage = 0; stage + 1 < graph.stages(); stage++) {
            Cancellation.check(cancelled);
            if (concessions == null) fill(stage);
            else fillConceding(stage);
        }
    }

    /** The scores of the paths within the restriction that {@code paths} has. */
    public static BestThrough of(ShortestPaths paths) {
        return new BestThrough(paths, Cancellation.NEVER);
    }

    /**
     * The scores of the paths within the restriction that {@code paths} has.
     *
     * @param cancelled asked once per stage; the pass stops when it says true
     * @throws java.util.concurrent.CancellationException if stopped
     */
    public static BestThrough of(ShortestPaths paths, BooleanSupplier cancelled) {
        return new BestThrough(paths, cancelled);
    }

    /** The best path that uses a state; empty if there is none. */
    public Optional<Score> state(int stage, int state) {
        graph.checkState(stage, state);
        int index = graph.offset[stage] + state;
        if (!isReached(stage, state)) return Optional.empty();
        long own = graph.nodeCost[stage][state];
        long total = cost[index] + toGo.cost[stage][state] - own;
        if (concessions == null) return Optional.of(new Score(ConcessionScale.NONE, total));
        // Packed counts add and subtract like numbers as long as no level overflows, which add checks.
        long before = concessions[index] - graph.nodeConcessions(stage, state);
        return Optional.of(new Score(graph.scale().add(before, toGo.concessions[stage][state]), total));
    }

    /**
     * The best path that uses an edge; empty if there is none.
     *
     * @param edge index within {@link LayeredGraph#transition transition(stage)}
     */
    public Optional<Score> edge(int stage, int source, int edge) {
        graph.checkState(stage, source);
        Transition moves = graph.transition(stage);
        if (edge < moves.firstEdge(source) || edge >= moves.endEdge(source))
            throw new IllegalArgumentException("edge from state " + source + " of stage " + stage + " is " + edge
                    + "; allowed: " + moves.firstEdge(source) + " to " + (moves.endEdge(source) - 1));
        if (!isReached(stage, source) || !toGo.reachesEnd(stage + 1, moves.target[edge])) return Optional.empty();
        return Optional.of(new Score(edgeConcessions(stage, source, edge), edgeCost(stage, source, edge)));
    }

    /** Whether a best path by this edge concedes as little as the best of all and costs at most {@code limit}. */
    boolean isWithin(int stage, int source, int edge, long leastConcessions, long limit) {
        int to = graph.transition[stage].target[edge];
        if (!isReached(stage, source) || !toGo.reachesEnd(stage + 1, to)) return false;
        if (edgeCost(stage, source, edge) > limit) return false;
        return concessions == null || edgeConcessions(stage, source, edge) == leastConcessions;
    }

    private boolean isReached(int stage, int state) {
        return cost[graph.offset[stage] + state] < CostToGo.UNREACHABLE && toGo.reachesEnd(stage, state);
    }

    private long edgeCost(int stage, int source, int edge) {
        Transition moves = graph.transition[stage];
        return cost[graph.offset[stage] + source] + moves.cost[edge] + toGo.cost[stage + 1][moves.target[edge]];
    }

    private long edgeConcessions(int stage, int source, int edge) {
        if (concessions == null) return ConcessionScale.NONE;
        Transition moves = graph.transition[stage];
        ConcessionScale scale = graph.scale();
        long before = scale.add(concessions[graph.offset[stage] + source], moves.concessions(edge));
        return scale.add(before, toGo.concessions[stage + 1][moves.target[edge]]);
    }

    private void fill(int stage) {
        Transition moves = graph.transition[stage];
        int base = graph.offset[stage];
        int next = graph.offset[stage + 1];
        for (int source = 0; source < graph.states(stage); source++) {
            long before = cost[base + source];
            if (before >= CostToGo.UNREACHABLE) continue;
            for (int edge = moves.start[source]; edge < moves.start[source + 1]; edge++) {
                int to = next + moves.target[edge];
                if (before + moves.cost[edge] < cost[to]) cost[to] = before + moves.cost[edge];
            }
        }
        for (int state = 0; state < graph.states(stage + 1); state++) {
            boolean reached = cost[next + state] < CostToGo.UNREACHABLE && toGo.reachesEnd(stage + 1, state);
            cost[next + state] = reached ? cost[next + state] + graph.nodeCost[stage + 1][state] : CostToGo.UNREACHABLE;
        }
    }

    private void fillConceding(int stage) {
        Transition moves = graph.transition[stage];
        ConcessionScale scale = graph.scale();
        int base = graph.offset[stage];
        int next = graph.offset[stage + 1];
        for (int source = 0; source < graph.states(stage); source++) {
            if (cost[base + source] >= CostToGo.UNREACHABLE) continue;
            for (int edge = moves.start[source]; edge < moves.start[source + 1]; edge++) {
                int to = next + moves.target[edge];
                if (!toGo.reachesEnd(stage + 1, moves.target[edge])) continue;
                long given = scale.add(
                        scale.add(concessions[base + source], moves.concessions(edge)),
                        graph.nodeConcessions(stage + 1, moves.target[edge]));
                long one = cost[base + source] + moves.cost[edge] + graph.nodeCost[stage + 1][moves.target[edge]];
                boolean better = cost[to] >= CostToGo.UNREACHABLE
                        || given < concessions[to]
                        || given == concessions[to] && one < cost[to];
                if (!better) continue;
                cost[to] = one;
                concessions[to] = given;
            }
        }
    }
}
