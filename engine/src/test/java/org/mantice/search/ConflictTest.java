package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ConflictTest {
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

            Conflict conflict = Conflict.among(graph, locks);

            assertThat(conflict.smallest()).isTrue();
            assertThat(conflict.locks()).as("seed %s", seed).hasSize(smallestSize(graph, locks));
            assertThat(ShortestPaths.of(graph, all(locks, mask(conflict.locks()))).feasible()).isFalse();
            conflicts++;
        }
        assertThat(conflicts).isGreaterThan(150);
    }

    @Test
    void twoLocksOnOneStageAreNamedAmongMany() {
        LayeredGraph.Builder graph = LayeredGraph.builder().first(0, 0);
        Transition all = Transition.builder(2, 2).edge(0, 0, 0).edge(0, 1, 0).edge(1, 0, 0).edge(1, 1, 0).build();
        List<Restriction> locks = new ArrayList<>();
        for (int stage = 1; stage < 40; stage++) {
            graph.next(all, 0, 0);
            locks.add(Restriction.free().requiring(stage, 1));
        }
        locks.add(Restriction.free().forbidding(17, 1, 2));

        assertThat(Conflict.among(graph.build(), locks)).isEqualTo(new Conflict(List.of(16, 39), true));
    }

    @Test
    void locksThatLeaveAPathAreRefused() {
        LayeredGraph graph = LayeredGraph.builder().first(0).build();

        assertThatIllegalArgumentException().isThrownBy(() -> Conflict.among(graph, List.of()));
    }

    private static int smallestSize(LayeredGraph graph, List<Restriction> locks) {
        int smallest = locks.size();
        for (int mask = 0; mask < 1 << locks.size(); mask++)
            if (Integer.bitCount(mask) < smallest && !ShortestPaths.of(graph, all(locks, mask)).feasible())
                smallest = Integer.bitCount(mask);
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
