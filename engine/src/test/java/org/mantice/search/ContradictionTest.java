package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ContradictionTest {
    @Test
    void theSmallestContradictorySetIsThatOfBruteForce() {
        int conflicts = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            LayeredGraph graph = Lattices.random(random, 7, 3, 3, 75);
            List<Restriction> locks = new ArrayList<>();
            for (int stage = 0; stage < graph.stages(); stage++)
                locks.add(Restriction.free().requiring(stage, random.nextInt(graph.states(stage))));
            if (ShortestPaths.of(graph, all(locks, -1)).feasible()) continue;

            Contradiction<Integer> conflict = among(graph, locks).orElseThrow();

            assertThat(conflict.smallest()).isTrue();
            assertThat(conflict.demands()).as("seed %s", seed).hasSize(smallestSize(graph, locks));
            assertThat(ShortestPaths.of(graph, all(locks, mask(conflict.demands())))
                            .feasible())
                    .isFalse();
            conflicts++;
        }
        assertThat(conflicts).isGreaterThan(150);
    }

    @Test
    void twoLocksOnOneStageAreNamedAmongMany() {
        LayeredGraph.Builder graph = LayeredGraph.builder().first(0, 0);
        Transition all = Transition.builder(2, 2)
                .edge(0, 0, 0)
                .edge(0, 1, 0)
                .edge(1, 0, 0)
                .edge(1, 1, 0)
                .build();
        List<Restriction> locks = new ArrayList<>();
        for (int stage = 1; stage < 40; stage++) {
            graph.next(all, 0, 0);
            locks.add(Restriction.free().requiring(stage, 1));
        }
        locks.add(Restriction.free().forbidding(17, 1, 2));

        assertThat(among(graph.build(), locks)).hasValue(new Contradiction<>(List.of(16, 39), true));
    }

    @Test
    void locksThatLeaveAPathDoNotContradict() {
        LayeredGraph graph = LayeredGraph.builder().first(0).build();

        assertThat(among(graph, List.of(Restriction.free().requiring(0, 0)))).isEmpty();
    }

    @Test
    void fromDemandsThatCannotBeWeighedInTimeNothingCanBeDropped() {
        List<Integer> demands = IntStream.range(0, 60).boxed().toList();
        List<Integer> culprits = List.of(5, 20, 40, 41, 58);

        Contradiction<Integer> found = Contradiction.among(demands, some -> !some.containsAll(culprits))
                .orElseThrow();

        assertThat(found).isEqualTo(new Contradiction<>(culprits, false));
    }

    private static Optional<Contradiction<Integer>> among(LayeredGraph graph, List<Restriction> locks) {
        List<Integer> indices = IntStream.range(0, locks.size()).boxed().toList();
        return Contradiction.among(indices, some -> {
            Restriction all = Restriction.free();
            for (int lock : some) all = all.and(locks.get(lock));
            return graph.hasPath(all);
        });
    }

    private static int smallestSize(LayeredGraph graph, List<Restriction> locks) {
        int smallest = locks.size();
        for (int mask = 0; mask < 1 << locks.size(); mask++)
            if (Integer.bitCount(mask) < smallest
                    && !ShortestPaths.of(graph, all(locks, mask)).feasible()) smallest = Integer.bitCount(mask);
        return smallest;
    }

    private static int mask(List<Integer> locks) {
        return locks.stream().mapToInt(lock -> 1 << lock).sum();
    }

    private static Restriction all(List<Restriction> locks, int mask) {
        Restriction all = Restriction.free();
        for (int lock = 0; lock < locks.size(); lock++) if ((mask >> lock & 1) == 1) all = all.and(locks.get(lock));
        return all;
    }
}
