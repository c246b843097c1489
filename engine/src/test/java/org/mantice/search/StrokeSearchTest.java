package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.mantice.search.StrokeLattice.Direction;
import org.mantice.search.StrokePlan.Stroke;

class StrokeSearchTest {
    private static final int ALL = 1_000_000;

    @Test
    void theBestPlansOfSmallLatticesAreSortedBruteForceTiesIncluded() {
        int plans = 0;
        for (long seed = 0; seed < 400; seed++) {
            RandomStrokes lattice = new RandomStrokes(seed, 9, 0);
            List<StrokePlan> expected = lattice.all();

            StrokeAnswer answer = StrokeSearch.of(lattice).answer(StrokeQuery.best(ALL));

            assertThat(answer.plans()).as("seed %s", seed).isEqualTo(expected);
            assertThat(answer.complete()).isTrue();
            assertThat(new HashSet<>(answer.plans())).hasSameSizeAs(expected);
            plans += expected.size();
        }
        assertThat(plans).isGreaterThan(5_000);
    }

    @Test
    void fewPlansAreTheFirstOfManyPlans() {
        for (long seed = 0; seed < 200; seed++) {
            RandomStrokes lattice = new RandomStrokes(seed, 10, 0);
            StrokeSearch search = StrokeSearch.of(lattice);
            List<StrokePlan> all = lattice.all();

            for (int count : new int[] {0, 1, 2, 3, 8, 20})
                assertThat(search.answer(StrokeQuery.best(count)).plans())
                        .as("seed %s, %s plans", seed, count)
                        .isEqualTo(all.subList(0, Math.min(count, all.size())));
        }
    }

    @Test
    void onlyTheLeastConcedingPlansAreGiven() {
        int conceding = 0;
        for (long seed = 0; seed < 600; seed++) {
            RandomStrokes lattice = new RandomStrokes(seed, 9, 40 + (int) (seed % 60));
            List<StrokePlan> all = lattice.all();
            List<StrokePlan> expected = all.stream()
                    .filter(plan -> plan.concessions() == all.get(0).concessions())
                    .toList();

            assertThat(StrokeSearch.of(lattice).answer(StrokeQuery.best(ALL)).plans())
                    .as("seed %s", seed)
                    .isEqualTo(expected);
            if (expected.size() > 1 && expected.get(0).concessions() > 0) conceding++;
        }
        assertThat(conceding).isGreaterThan(80);
    }

    @Test
    void differingPlansAreThoseOfBruteForce() {
        int found = 0;
        for (long seed = 0; seed < 300; seed++) {
            RandomStrokes lattice = new RandomStrokes(seed, 9, 0);
            StrokeQuery.Difference difference = (from, to, direction) -> (from * 7 + to * 3 + direction.ordinal()) % 3;
            for (int least : new int[] {1, 3, 8}) {
                List<StrokePlan> expected = lattice.all().stream()
                        .filter(plan -> plan.strokes().stream()
                                        .mapToInt(one -> difference.of(one.from(), one.to(), one.direction()))
                                        .sum()
                                >= least)
                        .toList();

                assertThat(StrokeSearch.of(lattice)
                                .answer(StrokeQuery.best(ALL).differing(least, difference))
                                .plans())
                        .as("seed %s, %s differences", seed, least)
                        .isEqualTo(expected);
                found += expected.size();
            }
        }
        assertThat(found).isGreaterThan(3_000);
    }

    @Test
    void plansBeyondALimitAreNotGiven() {
        for (long seed = 0; seed < 200; seed++) {
            RandomStrokes lattice = new RandomStrokes(seed, 9, (int) (seed % 2) * 40);
            List<StrokePlan> all = lattice.all();
            if (all.isEmpty()) continue;
            long limit = all.get(0).cost() + 2;
            long concessions = all.get(0).concessions();
            List<StrokePlan> expected = all.stream()
                    .filter(plan -> plan.cost() <= limit && plan.concessions() == concessions)
                    .toList();

            assertThat(StrokeSearch.of(lattice)
                            .answer(StrokeQuery.best(ALL).within(limit, concessions))
                            .plans())
                    .as("seed %s", seed)
                    .isEqualTo(expected);
        }
    }

    @Test
    void pastTheBudgetPlansAreStillValidAndTheBoundHolds() {
        int unproven = 0;
        for (long seed = 0; seed < 300; seed++) {
            RandomStrokes lattice = new RandomStrokes(seed, 10, (int) (seed % 3) * 20);
            List<StrokePlan> all = lattice.all();

            StrokeAnswer answer =
                    StrokeSearch.of(lattice).answer(StrokeQuery.best(8).withLabelBudget(10));

            assertThat(all).as("seed %s", seed).containsAll(answer.plans());
            assertThat(answer.plans().subList(0, answer.proven())).isEqualTo(all.subList(0, answer.proven()));
            if (answer.complete()) continue;
            if (all.size() > answer.proven()) {
                StrokePlan next = all.get(answer.proven());
                assertThat(next.concessions()).isGreaterThanOrEqualTo(answer.concessionBound());
                if (next.concessions() == answer.concessionBound())
                    assertThat(next.cost()).isGreaterThanOrEqualTo(answer.costBound());
            }
            unproven += answer.plans().size() - answer.proven();
        }
        assertThat(unproven).isGreaterThan(100);
    }

    @Test
    void levelsStayWithinTheCapacityAndDirectionsAlternate() {
        int strokes = 0;
        for (long seed = 0; seed < 200; seed++) {
            RandomStrokes lattice = new RandomStrokes(seed, 12, 0);
            for (StrokePlan plan :
                    StrokeSearch.of(lattice).answer(StrokeQuery.best(5)).plans()) {
                Stroke before = null;
                for (Stroke stroke : plan.strokes()) {
                    int change = stroke.endLevel() - stroke.startLevel();
                    assertThat(stroke.endLevel()).isBetween(0, lattice.capacity());
                    assertThat(change)
                            .isEqualTo((stroke.direction() == Direction.RISING ? 1 : -1)
                                    * lattice.amount(stroke.from(), stroke.to()));
                    if (before != null && stroke.shift() == StrokePlan.NO_SHIFT) {
                        assertThat(stroke.direction())
                                .isEqualTo(before.direction().opposite());
                        assertThat(stroke.startLevel()).isEqualTo(before.endLevel());
                    }
                    before = stroke;
                    strokes++;
                }
            }
        }
        assertThat(strokes).isGreaterThan(500);
    }

    @Test
    void aCancelledSearchStops() {
        StrokeSearch search = StrokeSearch.of(new RandomStrokes(1, 9, 0));

        assertThatThrownBy(() -> search.answer(StrokeQuery.best(1).cancelledBy(() -> true)))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> StrokeQuery.best(-1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeQuery.best(1).differing(9, (a, b, c) -> 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeQuery.best(1).withLabelBudget(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new StrokeLattice.Start(-1, Direction.RISING));
        assertThatIllegalArgumentException().isThrownBy(() -> new StrokeLattice.Shift(1, 0, 0, 0));
    }
}
