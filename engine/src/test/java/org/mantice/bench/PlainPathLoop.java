package org.mantice.bench;

import org.mantice.search.LayeredGraph;
import org.mantice.search.Transition;

/** The reference: the cost of the best path of a lattice by a loop over plain arrays, and nothing else. */
final class PlainPathLoop {
    private final long[][] nodes;
    private final int[][] start;
    private final int[][] target;
    private final long[][] cost;

    PlainPathLoop(LayeredGraph graph) {
        nodes = new long[graph.stages()][];
        start = new int[graph.stages() - 1][];
        target = new int[graph.stages() - 1][];
        cost = new long[graph.stages() - 1][];
        for (int stage = 0; stage < nodes.length; stage++) {
            nodes[stage] = new long[graph.states(stage)];
            for (int state = 0; state < nodes[stage].length; state++)
                nodes[stage][state] = graph.nodeCost(stage, state);
            if (stage + 1 < nodes.length) copy(graph, stage);
        }
    }

    /** Equal contexts share their arrays here too. */
    private void copy(LayeredGraph graph, int stage) {
        Transition moves = graph.transition(stage);
        for (int before = 0; before < stage; before++)
            if (graph.transition(before) == moves) {
                start[stage] = start[before];
                target[stage] = target[before];
                cost[stage] = cost[before];
                return;
            }
        start[stage] = new int[moves.sources() + 1];
        target[stage] = new int[moves.edges()];
        cost[stage] = new long[moves.edges()];
        for (int state = 0; state < moves.sources(); state++) start[stage][state + 1] = moves.endEdge(state);
        for (int edge = 0; edge < moves.edges(); edge++) {
            target[stage][edge] = moves.target(edge);
            cost[stage][edge] = moves.cost(edge);
        }
    }

    /** Keeps the cost to go and the next state of every state, as any search that is to give a path must. */
    long best() {
        long[][] toGo = new long[nodes.length][];
        int[][] next = new int[nodes.length][];
        toGo[nodes.length - 1] = nodes[nodes.length - 1];
        for (int stage = nodes.length - 2; stage >= 0; stage--) {
            long[] ahead = toGo[stage + 1];
            long[] here = new long[nodes[stage].length];
            int[] to = new int[here.length];
            int[] ends = target[stage];
            long[] costs = cost[stage];
            for (int state = 0; state < here.length; state++) {
                long best = Long.MAX_VALUE;
                for (int edge = start[stage][state]; edge < start[stage][state + 1]; edge++) {
                    long one = costs[edge] + ahead[ends[edge]];
                    if (one < best) {
                        best = one;
                        to[state] = ends[edge];
                    }
                }
                here[state] = best + nodes[stage][state];
            }
            toGo[stage] = here;
            next[stage] = to;
        }
        long best = Long.MAX_VALUE;
        for (long one : toGo[0]) best = Math.min(best, one);
        return best + 0L * next[0][0];
    }
}
