package org.mantice.bench;

import java.util.Random;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Transition;

/** A seeded lattice like that of a right hand: 100 composite states a note, 20 moves from each, contexts that recur. */
final class HandLikeLattice {
    static final int STATES = 100;
    static final int MOVES = 20;
    static final int SOURCE = -1;
    static final int SINK = -2;

    /** Different contexts; notes with equal contexts share their moves. */
    private static final int CONTEXTS = 24;

    private HandLikeLattice() {}

    static LayeredGraph of(int notes) {
        Random random = new Random(300);
        Transition[] contexts = new Transition[CONTEXTS];
        for (int context = 0; context < CONTEXTS; context++) contexts[context] = moves(random);
        LayeredGraph.Builder graph = LayeredGraph.builder().first(nodes(random));
        for (int note = 1; note < notes; note++) graph.next(contexts[random.nextInt(CONTEXTS)], nodes(random));
        return graph.build();
    }

    private static Transition moves(Random random) {
        Transition.Builder moves = Transition.builder(STATES, STATES);
        for (int source = 0; source < STATES; source++)
            random.ints(0, STATES).distinct().limit(MOVES).sorted().forEach(new EdgeAdder(moves, source, random)::add);
        return moves.build();
    }

    private record EdgeAdder(Transition.Builder moves, int source, Random random) {
        void add(int target) {
            moves.edge(source, target, 1_000L * random.nextInt(4_000));
        }
    }

    private static long[] nodes(Random random) {
        return random.longs(STATES, 0, 500).map(cost -> cost * 1_000).toArray();
    }

    /** The same lattice for a graph library: node costs on the edges that leave the node, a source and a sink. */
    static SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> asGraph(LayeredGraph graph) {
        var other = new SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        other.addVertex(SOURCE);
        other.addVertex(SINK);
        for (int vertex = 0; vertex < graph.states(); vertex++) other.addVertex(vertex);
        for (int stage = 0; stage < graph.stages(); stage++)
            for (int state = 0; state < STATES; state++) {
                int vertex = stage * STATES + state;
                if (stage == 0) other.setEdgeWeight(other.addEdge(SOURCE, vertex), 0);
                double own = graph.nodeCost(stage, state);
                if (stage + 1 == graph.stages()) {
                    other.setEdgeWeight(other.addEdge(vertex, SINK), own);
                    continue;
                }
                Transition moves = graph.transition(stage);
                for (int edge = moves.firstEdge(state); edge < moves.endEdge(state); edge++)
                    other.setEdgeWeight(
                            other.addEdge(vertex, (stage + 1) * STATES + moves.target(edge)), own + moves.cost(edge));
            }
        return other;
    }
}
