package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class ShortestPathsTest {
    /** Outside fact O54: k-best on a small trellis is sorted brute force (source from memory: any textbook). */
    @Test
    void theBestPathsOfSmallLatticesAreSortedBruteForceTiesIncluded() {
        int compared = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            LayeredGraph graph = Lattices.random(random, 6, 4, 1 + random.nextInt(6), 40 + random.nextInt(61));
            List<Path> expected = Lattices.all(graph);

            assertThat(ShortestPaths.of(graph).best(Integer.MAX_VALUE))
                    .as("seed %s", seed)
                    .isEqualTo(expected);
            compared += expected.size();
        }
        assertThat(compared).isGreaterThan(10_000);
    }

    @Test
    void eightNotesByFiveFingersAreSortedBruteForceTiesIncluded() {
        LayeredGraph graph = trellis(new Random(54), 8, 5, 3);

        List<Path> paths = ShortestPaths.of(graph).best(400_000);

        assertThat(paths).hasSize(390_625).isEqualTo(Lattices.all(graph));
        assertThat(new HashSet<>(paths)).hasSameSizeAs(paths);
    }

    @Test
    void pathsOfEqualCostComeInTheOrderOfTheirStates() {
        LayeredGraph graph = trellis(new Random(1), 4, 3, 0);

        List<Path> paths = ShortestPaths.of(graph).best(100);

        assertThat(paths).hasSize(81).isSorted();
        assertThat(paths.get(0).toArray()).containsExactly(0, 0, 0, 0);
        assertThat(paths.get(1).toArray()).containsExactly(0, 0, 0, 1);
        assertThat(paths.get(80).toArray()).containsExactly(2, 2, 2, 2);
    }

    @Test
    void theFirstOfManyAreTheBestFew() {
        for (int seed = 0; seed < 30; seed++) {
            LayeredGraph graph = Lattices.random(new Random(seed), 8, 5, 4, 70);
            List<Path> many = ShortestPaths.of(graph).best(50);

            for (int j = 0; j <= many.size(); j++)
                assertThat(ShortestPaths.of(graph).best(j)).isEqualTo(many.subList(0, j));
        }
    }

    @Test
    void askingForNoneGivesNoneAndForFewerIsRefused() {
        ShortestPaths paths = ShortestPaths.of(trellis(new Random(2), 3, 2, 5));

        assertThat(paths.best(0)).isEmpty();
        assertThat(paths.best(1)).containsExactly(paths.best().orElseThrow());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> paths.best(-1))
                .withMessage("k is -1; allowed: 0 or more");
    }

    @Test
    void askingForMoreThanThereAreGivesAll() {
        LayeredGraph graph = trellis(new Random(3), 3, 2, 5);

        assertThat(ShortestPaths.of(graph).best(1000)).hasSize(8);
    }

    @Test
    void theIteratorEndsWithTheLastPath() {
        var all = ShortestPaths.of(LayeredGraph.builder().first(7, 5).build()).iterator();

        assertThat(all.next().state(0)).isEqualTo(1);
        assertThat(all.next().cost()).isEqualTo(7);
        assertThat(all.hasNext()).isFalse();
        assertThatThrownBy(all::next).isInstanceOf(NoSuchElementException.class);
    }

    @Test
    void twoIteratorsDoNotDisturbEachOther() {
        ShortestPaths paths = ShortestPaths.of(trellis(new Random(4), 5, 3, 9));
        List<Path> expected = paths.best(40);
        var one = paths.iterator();
        var two = paths.iterator();
        List<Path> seen = new ArrayList<>();

        for (int i = 0; i < 40; i++) {
            seen.add(one.next());
            assertThat(two.next()).isEqualTo(seen.get(i));
        }

        assertThat(seen).isEqualTo(expected);
    }

    @Test
    void aLatticeWithoutPathSaysWhereItEnds() {
        Transition all = Transition.builder(1, 2).edge(0, 0, 1).edge(0, 1, 1).build();
        Transition none = Transition.builder(2, 1).build();
        LayeredGraph graph =
                LayeredGraph.builder().first(0).next(all, 0, 0).next(none, 0).build();

        ShortestPaths paths = ShortestPaths.of(graph);

        assertThat(paths.feasible()).isFalse();
        assertThat(paths.best()).isEmpty();
        assertThat(paths.best(5)).isEmpty();
        assertThat(paths.concessions()).isEmpty();
        assertThat(paths.firstBlockedStage()).hasValue(2);
    }

    @Test
    void aStageWithoutStatesHasNoPath() {
        LayeredGraph graph = LayeredGraph.builder().first().build();

        assertThat(ShortestPaths.of(graph).best()).isEmpty();
        assertThat(ShortestPaths.of(graph).firstBlockedStage()).hasValue(0);
    }

    @Test
    void restrictedPathsAreThoseOfBruteForceThatKeepTheLocks() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            LayeredGraph graph = Lattices.random(random, 6, 4, 5, 80);
            Restriction locks = Restriction.free();
            BitSet[] allowed = new BitSet[graph.stages()];
            for (int stage = 0; stage < graph.stages(); stage++) {
                allowed[stage] = new BitSet();
                allowed[stage].set(0, graph.states(stage));
                if (random.nextInt(2) == 0) continue;
                for (int state = 0; state < graph.states(stage); state++)
                    if (random.nextInt(3) == 0) allowed[stage].clear(state);
                locks = locks.allowing(stage, allowed[stage]);
            }

            List<Path> expected = Lattices.all(graph).stream()
                    .filter(path -> keeps(path, allowed))
                    .toList();

            ShortestPaths restricted = ShortestPaths.of(graph, locks);
            assertThat(restricted.best(Integer.MAX_VALUE)).as("seed %s", seed).isEqualTo(expected);
            assertThat(restricted.firstBlockedStage().isPresent()).isEqualTo(expected.isEmpty());
        }
    }

    @Test
    void requiringAndForbiddingTheSameStateLeavesNoPath() {
        LayeredGraph graph = trellis(new Random(5), 4, 3, 5);
        Restriction both =
                Restriction.free().requiring(2, 1).and(Restriction.free().forbidding(2, 1, 3));

        assertThat(ShortestPaths.of(graph, both).feasible()).isFalse();
        assertThat(ShortestPaths.of(graph, both).firstBlockedStage()).hasValue(2);
    }

    @Test
    void aLockOutsideTheLatticeIsRefused() {
        LayeredGraph graph = trellis(new Random(5), 4, 3, 5);

        Restriction beyond = Restriction.free().requiring(4, 0);
        Restriction above = Restriction.free().requiring(1, 3);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShortestPaths.of(graph, beyond))
                .withMessage("restricted stage is 4; allowed: 0 to 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShortestPaths.of(graph, above))
                .withMessage("state of stage 1 is 3; allowed: 0 to 2");
    }

    @Test
    void theLeastConcedingPathsComeInOrderOfCost() {
        int conceding = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            ConcessionScale scale = new ConcessionScale(1 + random.nextInt(5));
            LayeredGraph graph = Lattices.random(random, 6, 4, 4, 60, scale, 10 + random.nextInt(70));
            List<Path> expected = Lattices.all(graph).isEmpty() ? List.of() : Lattices.leastConceding(graph);

            ShortestPaths paths = ShortestPaths.of(graph);

            assertThat(paths.best(Integer.MAX_VALUE)).as("seed %s", seed).isEqualTo(expected);
            if (!expected.isEmpty())
                assertThat(paths.concessions()).hasValue(expected.get(0).concessions());
            if (expected.size() > 1 && expected.get(0).concessions() > 0) conceding++;
        }
        assertThat(conceding).isGreaterThan(50);
    }

    @Test
    void aMildConcessionIsNeverExchangedForAWorseOneHoweverDear() {
        ConcessionScale scale = new ConcessionScale(2);
        Transition moves = Transition.builder(1, 2)
                .edge(0, 0, 0, scale.one(0))
                .edge(0, 1, 1_000_000_000_000L, scale.pack(0, 1000))
                .build();
        LayeredGraph graph =
                LayeredGraph.builder(scale).first(0).next(moves, 0, 0).build();

        Path best = ShortestPaths.of(graph).best().orElseThrow();

        assertThat(best.state(1)).isEqualTo(1);
        assertThat(scale.count(best.concessions(), 1)).isEqualTo(1000);
    }

    @Test
    void theBestPathThroughAStateIsBruteForce() {
        for (int seed = 0; seed < 100; seed++) {
            LayeredGraph graph = Lattices.random(new Random(seed), 5, 4, 3, 70);
            ShortestPaths paths = ShortestPaths.of(graph);
            List<Path> all = Lattices.all(graph);
            for (int stage = 0; stage < graph.stages(); stage++)
                for (int state = 0; state < graph.states(stage); state++) {
                    int at = stage;
                    int wanted = state;
                    assertThat(paths.bestThrough(stage, state))
                            .isEqualTo(all.stream()
                                    .filter(path -> path.state(at) == wanted)
                                    .findFirst());
                }
        }
    }

    @Test
    void otherCostsOnTheSameShapeGiveTheSameAsANewLattice() {
        LayeredGraph graph = trellis(new Random(6), 5, 4, 9);
        List<long[]> nodes = new ArrayList<>();
        List<Transition> transitions = new ArrayList<>();
        for (int stage = 0; stage < 5; stage++) {
            nodes.add(new Random(stage).longs(4, 0, 9).toArray());
            if (stage < 4)
                transitions.add(graph.transition(stage)
                        .withCosts(new Random(stage).longs(16, 0, 9).toArray()));
        }

        LayeredGraph other = graph.withCosts(nodes, transitions);

        assertThat(ShortestPaths.of(other).best(2000)).isEqualTo(Lattices.all(other));
        assertThat(ShortestPaths.of(graph).best(2000)).isEqualTo(Lattices.all(graph));
    }

    @Test
    void aCancelledSearchStops() {
        LayeredGraph graph = trellis(new Random(7), 5, 3, 5);

        assertThatThrownBy(() -> ShortestPaths.of(graph, Restriction.free(), () -> true))
                .isInstanceOf(CancellationException.class);
    }

    private static boolean keeps(Path path, BitSet[] allowed) {
        for (int stage = 0; stage < allowed.length; stage++) if (!allowed[stage].get(path.state(stage))) return false;
        return true;
    }

    /** A full trellis with costs from 0 to {@code largest}. */
    private static LayeredGraph trellis(Random random, int stages, int states, int largest) {
        LayeredGraph.Builder graph = LayeredGraph.builder()
                .first(random.longs(states, 0, largest + 1L).toArray());
        for (int stage = 1; stage < stages; stage++) {
            Transition.Builder moves = Transition.builder(states, states);
            for (int source = 0; source < states; source++)
                for (int target = 0; target < states; target++) moves.edge(source, target, random.nextInt(largest + 1));
            graph.next(moves.build(), random.longs(states, 0, largest + 1L).toArray());
        }
        return graph.build();
    }
}
