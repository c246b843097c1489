package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.alg.shortestpath.YenShortestPathIterator;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * Compares a layer's lattice with a general-purpose graph library, JGraphT: the optimum of the whole, and the order of
 * the best paths of its first stages. What gives way is left out of both: the best plans of ordinary music do without.
 */
public final class SecondOpinion {
    static final int SOURCE = -1;
    static final int SINK = -2;

    private SecondOpinion() {}

    /** @return states and moves compared, in words */
    public static String on(LayeredGraph lattice, int stagesForOrder, int paths) {
        LayeredGraph whole = plain(lattice, lattice.stages());
        Path ours = ShortestPaths.of(whole).best().orElseThrow();
        var theirs = DijkstraShortestPath.findPathBetween(converted(whole), SOURCE, SINK);
        assertThat((long) theirs.getWeight()).isEqualTo(ours.cost());
        assertThat(ShortestPaths.of(lattice).best().orElseThrow().cost()).isEqualTo(ours.cost());

        LayeredGraph start = plain(lattice, Math.min(stagesForOrder, lattice.stages()));
        List<Path> inOrder = ShortestPaths.of(start).best(paths);
        var yen = new YenShortestPathIterator<>(converted(start), SOURCE, SINK);
        for (Path path : inOrder) {
            GraphPath<Integer, DefaultWeightedEdge> other = yen.next();
            assertThat(path.cost()).isEqualTo((long) other.getWeight());
        }
        assertThat(inOrder.stream().map(path -> Arrays.toString(path.toArray())))
                .doesNotHaveDuplicates();
        return lattice.stages() + " stages, " + lattice.states() + " states, optimum " + ours.cost();
    }

    /** The first stages, without states and moves that concede anything. */
    private static LayeredGraph plain(LayeredGraph lattice, int stages) {
        long[] first = new long[lattice.states(0)];
        for (int state = 0; state < first.length; state++) {
            boolean concedes = lattice.nodeConcessions(0, state) != ConcessionScale.NONE;
            first[state] = concedes ? LayeredGraph.LARGEST_TOTAL / 4 : lattice.nodeCost(0, state);
        }
        LayeredGraph.Builder plain = LayeredGraph.builder().first(first);
        for (int stage = 0; stage + 1 < stages; stage++) {
            Transition moves = lattice.transition(stage);
            Transition.Builder kept = Transition.builder(moves.sources(), moves.targets());
            long[] own = new long[moves.targets()];
            for (int target = 0; target < own.length; target++) own[target] = lattice.nodeCost(stage + 1, target);
            for (int source = 0; source < moves.sources(); source++)
                for (int edge = moves.firstEdge(source); edge < moves.endEdge(source); edge++)
                    if (moves.concessions(edge) == ConcessionScale.NONE
                            && lattice.nodeConcessions(stage + 1, moves.target(edge)) == ConcessionScale.NONE)
                        kept.edge(source, moves.target(edge), moves.cost(edge));
            plain.next(kept.build(), own);
        }
        return plain.build();
    }

    /** The lattice with node costs on the edges that leave the node, a source before and a sink after it. */
    static SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> converted(LayeredGraph graph) {
        var other = new SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        other.addVertex(SOURCE);
        other.addVertex(SINK);
        for (int vertex = 0; vertex < graph.states(); vertex++) other.addVertex(vertex);
        for (int stage = 0, base = 0; stage < graph.stages(); base += graph.states(stage++))
            for (int state = 0; state < graph.states(stage); state++) {
                double own = graph.nodeCost(stage, state);
                if (stage == 0) other.setEdgeWeight(other.addEdge(SOURCE, state), 0);
                if (stage == graph.stages() - 1) {
                    other.setEdgeWeight(other.addEdge(base + state, SINK), own);
                    continue;
                }
                Transition moves = graph.transition(stage);
                int next = base + graph.states(stage);
                for (int edge = moves.firstEdge(state); edge < moves.endEdge(state); edge++)
                    other.setEdgeWeight(other.addEdge(base + state, next + moves.target(edge)), own + moves.cost(edge));
            }
        return other;
    }
}
