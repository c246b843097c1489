package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class BestThroughTest {
    @Test
    void theBestScoreThroughEveryStateAndEdgeIsBruteForce() {
        int scores = 0;
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            ConcessionScale scale = new ConcessionScale(1 + random.nextInt(3));
            LayeredGraph graph = Lattices.random(random, 5, 4, 5, 60, scale, seed % 2 * 40);
            Restriction locks = seed % 3 == 0
                    ? Restriction.free().requiring(0, random.nextInt(graph.states(0)))
                    : Restriction.free();
            List<Path> all = Lattices.all(graph).stream()
                    .filter(path -> keeps(path, locks))
                    .toList();
            BestThrough through = BestThrough.of(ShortestPaths.of(graph, locks));

            for (int stage = 0; stage < graph.stages(); stage++)
                for (int state = 0; state < graph.states(stage); state++) {
                    int at = stage;
                    int here = state;
                    assertThat(through.state(stage, state))
                            .as("seed %s", seed)
                            .isEqualTo(first(all, path -> path.state(at) == here));
                    if (stage + 1 == graph.stages()) continue;
                    Transition moves = graph.transition(stage);
                    for (int edge = moves.firstEdge(state); edge < moves.endEdge(state); edge++) {
                        int to = moves.target(edge);
                        assertThat(through.edge(stage, state, edge))
                                .as("seed %s", seed)
                                .isEqualTo(first(all, path -> path.state(at) == here && path.state(at + 1) == to));
                        scores++;
                    }
                }
        }
        assertThat(scores).isGreaterThan(3_000);
    }

    @Test
    void anEdgeOfAnotherStateIsRefused() {
        Transition moves = Transition.builder(2, 1).edge(0, 0, 1).edge(1, 0, 1).build();
        LayeredGraph graph = LayeredGraph.builder().first(0, 0).next(moves, 0).build();
        BestThrough through = BestThrough.of(ShortestPaths.of(graph));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> through.edge(0, 0, 1))
                .withMessage("edge from state 0 of stage 0 is 1; allowed: 0 to 0");
        assertThatIllegalArgumentException().isThrownBy(() -> through.state(2, 0));
    }

    @Test
    void aCancelledPassStops() {
        ShortestPaths paths = ShortestPaths.of(Lattices.random(new Random(2), 9, 3, 3, 100));

        assertThatThrownBy(() -> BestThrough.of(paths, () -> true)).isInstanceOf(CancellationException.class);
    }

    private static Optional<Score> first(List<Path> sorted, Predicate<Path> wanted) {
        return sorted.stream().filter(wanted).findFirst().map(path -> new Score(path.concessions(), path.cost()));
    }

    private static boolean keeps(Path path, Restriction locks) {
        return locks.allowed(0).map(states -> states.get(path.state(0))).orElse(true);
    }
}
