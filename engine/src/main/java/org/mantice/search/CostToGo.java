package org.mantice.search;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.BooleanSupplier;

/**
 * One backward pass: for every state the least concessions, and among these the least cost, from there to the last
 * stage (the state's own included), and the smallest next state that achieves it. O(edges) time, O(states) memory.
 */
final class CostToGo {
    /** More than any cost; may be added to one without overflow. */
    static final long UNREACHABLE = Long.MAX_VALUE / 2;

    final LayeredGraph graph;
    /** By stage and state; many arrays of moderate size, which the garbage collector takes more lightly than one. */
    final long[][] cost;
    /** Least concessions to go by stage and state; null when the graph has none. */
    final long[][] concessions;

    final int[][] next;

    CostToGo(LayeredGraph graph, Restriction restriction, BooleanSupplier cancelled) {
        this.graph = graph;
        this.cost = new long[graph.stages()][];
        this.concessions = graph.hasConcessions() ? new long[graph.stages()][] : null;
        this.next = new int[graph.stages()][];
        BitSet[] masks = restriction.masks(graph);
        for (int stage = graph.stages() - 1; stage >= 0; stage--) {
            Cancellation.check(cancelled);
            next[stage] = new int[graph.states(stage)];
            if (stage == graph.stages() - 1) fillLast(stage);
            else if (concessions == null) fill(stage);
            else fillConceding(stage);
            if (masks[stage] != null) forbid(stage, masks[stage]);
        }
    }

    boolean reachesEnd(int stage, int state) {
        return cost[stage][state] < UNREACHABLE;
    }

    /** What taking {@code edge} from a state costs more than the best way on, or {@link #UNREACHABLE}. */
    long detour(int stage, int source, int edge) {
        Transition moves = graph.transition[stage];
        int to = moves.target[edge];
        if (!reachesEnd(stage + 1, to)) return UNREACHABLE;
        if (concessions != null && conceded(moves, stage, source, edge) != concessions[stage][source])
            return UNREACHABLE;
        return moves.cost[edge] + cost[stage + 1][to] - (cost[stage][source] - graph.nodeCost[stage][source]);
    }

    private void fillLast(int stage) {
        cost[stage] = graph.nodeCost[stage].clone();
        Arrays.fill(next[stage], -1);
        if (concessions == null) return;
        long[] own = graph.nodeConcessions[stage];
        concessions[stage] = own == null ? new long[graph.states(stage)] : own.clone();
    }

    private void fill(int stage) {
        Transition moves = graph.transition[stage];
        int[] start = moves.start;
        int[] target = moves.target;
        long[] edgeCost = moves.cost;
        long[] nodes = graph.nodeCost[stage];
        long[] ahead = cost[stage + 1];
        long[] here = new long[nodes.length];
        int[] to = next[stage];
        for (int state = 0; state < nodes.length; state++) {
            long best = UNREACHABLE;
            int arg = -1;
            for (int edge = start[state], end = start[state + 1]; edge < end; edge++) {
                long one = edgeCost[edge] + ahead[target[edge]];
                if (one < best) {
                    best = one;
                    arg = target[edge];
                }
            }
            here[state] = arg < 0 ? UNREACHABLE : best + nodes[state];
            to[state] = arg;
        }
        cost[stage] = here;
    }

    private void fillConceding(int stage) {
        Transition moves = graph.transition[stage];
        cost[stage] = new long[graph.states(stage)];
        concessions[stage] = new long[graph.states(stage)];
        for (int state = 0; state < graph.states(stage); state++) {
            long best = UNREACHABLE;
            long least = Long.MAX_VALUE;
            int arg = -1;
            for (int edge = moves.start[state]; edge < moves.start[state + 1]; edge++) {
                if (!reachesEnd(stage + 1, moves.target[edge])) continue;
                long given = conceded(moves, stage, state, edge);
                long one = moves.cost[edge] + cost[stage + 1][moves.target[edge]];
                if (given > least || given == least && one >= best) continue;
                least = given;
                best = one;
                arg = moves.target[edge];
            }
            cost[stage][state] = arg < 0 ? UNREACHABLE : best + graph.nodeCost[stage][state];
            concessions[stage][state] = arg < 0 ? ConcessionScale.NONE : least;
            next[stage][state] = arg;
        }
    }

    /** Concessions from a state on, its own included, if it goes on by {@code edge}. */
    private long conceded(Transition moves, int stage, int source, int edge) {
        ConcessionScale scale = graph.scale();
        long given = scale.add(moves.concessions(edge), concessions[stage + 1][moves.target[edge]]);
        long[] own = graph.nodeConcessions[stage];
        return own == null ? given : scale.add(own[source], given);
    }

    private void forbid(int stage, BitSet mask) {
        for (int state = mask.nextClearBit(0); state < graph.states(stage); state = mask.nextClearBit(state + 1)) {
            cost[stage][state] = UNREACHABLE;
            next[stage][state] = -1;
        }
    }
}
