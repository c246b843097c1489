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
    final long[] cost;
    /** Least concessions to go by state; null when the graph has none. */
    final long[] concessions;
    final int[] next;

    private final BitSet[] masks;

    CostToGo(LayeredGraph graph, Restriction restriction, BooleanSupplier cancelled) {
        this.graph = graph;
        this.masks = restriction.masks(graph);
        this.cost = new long[graph.states()];
        this.concessions = graph.hasConcessions() ? new long[graph.states()] : null;
        this.next = new int[graph.states()];
        Arrays.fill(next, -1);
        for (int stage = graph.stages() - 1; stage >= 0; stage--) {
            Cancellation.check(cancelled);
            if (stage == graph.stages() - 1) fillLast(stage);
            else if (concessions == null) fill(stage);
            else fillConceding(stage);
            if (masks[stage] != null) forbid(stage);
        }
    }

    boolean reachesEnd(int index) {
        return cost[index] < UNREACHABLE;
    }

    /** What taking {@code edge} from a state costs more than the best way on, or {@link #UNREACHABLE}. */
    long detour(int stage, int source, int edge) {
        Transition moves = graph.transition[stage];
        int from = graph.offset[stage] + source;
        int to = graph.offset[stage + 1] + moves.target[edge];
        if (cost[to] >= UNREACHABLE) return UNREACHABLE;
        if (concessions != null && conceded(moves, stage, source, edge, to) != concessions[from]) return UNREACHABLE;
        return moves.cost[edge] + cost[to] - (cost[from] - graph.nodeCost[stage][source]);
    }

    private void fillLast(int stage) {
        int base = graph.offset[stage];
        long[] nodes = graph.nodeCost[stage];
        System.arraycopy(nodes, 0, cost, base, nodes.length);
        if (graph.nodeConcessions[stage] != null)
            System.arraycopy(graph.nodeConcessions[stage], 0, concessions, base, nodes.length);
    }

    private void fill(int stage) {
        Transition moves = graph.transition[stage];
        int[] start = moves.start;
        int[] target = moves.target;
        long[] edgeCost = moves.cost;
        long[] nodes = graph.nodeCost[stage];
        long[] toGo = cost;
        int base = graph.offset[stage];
        int nextBase = graph.offset[stage + 1];
        for (int state = 0; state < nodes.length; state++) {
            long best = UNREACHABLE;
            int arg = -1;
            for (int edge = start[state], end = start[state + 1]; edge < end; edge++) {
                long one = edgeCost[edge] + toGo[nextBase + target[edge]];
                if (one < best) {
                    best = one;
                    arg = target[edge];
                }
            }
            toGo[base + state] = arg < 0 ? UNREACHABLE : best + nodes[state];
            next[base + state] = arg;
        }
    }

    private void fillConceding(int stage) {
        Transition moves = graph.transition[stage];
        int base = graph.offset[stage];
        int nextBase = graph.offset[stage + 1];
        for (int state = 0; state < graph.states(stage); state++) {
            long best = UNREACHABLE;
            long least = Long.MAX_VALUE;
            int arg = -1;
            for (int edge = moves.start[state]; edge < moves.start[state + 1]; edge++) {
                int to = nextBase + moves.target[edge];
                if (cost[to] >= UNREACHABLE) continue;
                long given = conceded(moves, stage, state, edge, to);
                long one = moves.cost[edge] + cost[to];
                if (given > least || given == least && one >= best) continue;
                least = given;
                best = one;
                arg = moves.target[edge];
            }
            cost[base + state] = arg < 0 ? UNREACHABLE : best + graph.nodeCost[stage][state];
            concessions[base + state] = arg < 0 ? ConcessionScale.NONE : least;
            next[base + state] = arg;
        }
    }

    /** Concessions from a state on, its own included, if it goes on by {@code edge}. */
    private long conceded(Transition moves, int stage, int source, int edge, int to) {
        ConcessionScale scale = graph.scale();
        long given = scale.add(moves.concessions(edge), concessions[to]);
        long[] own = graph.nodeConcessions[stage];
        return own == null ? given : scale.add(own[source], given);
    }

    private void forbid(int stage) {
        int base = graph.offset[stage];
        for (int state = masks[stage].nextClearBit(0); state < graph.states(stage);
                state = masks[stage].nextClearBit(state + 1)) {
            cost[base + state] = UNREACHABLE;
            next[base + state] = -1;
        }
    }
}
