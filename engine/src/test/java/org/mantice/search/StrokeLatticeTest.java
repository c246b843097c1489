package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class StrokeLatticeTest {
    /** Three places, ten units from each to the next, a capacity of twenty; nothing costs anything. */
    private static class Plain implements StrokeLattice {
        @Override
        public int places() {
            return 3;
        }

        @Override
        public int capacity() {
            return 20;
        }

        @Override
        public int amount(int from, int to) {
            return 10 * (to - from);
        }

        @Override
        public int cells() {
            return 2;
        }

        @Override
        public int firstLevel(int cell) {
            return 10 * cell;
        }

        @Override
        public List<Start> starts() {
            return List.of(new Start(0, Direction.RISING));
        }

        @Override
        public long strokeCost(int from, int to, Direction direction) {
            return 0;
        }

        @Override
        public long turnCost(int place, Direction next) {
            return 5;
        }

        @Override
        public long pairCost(int first, int middle, int last) {
            return 0;
        }

        @Override
        public long endCost(int place, Direction direction, int cell) {
            return 0;
        }
    }

    @Test
    void oneLongStrokeIsBetterThanATurn() {
        StrokeAnswer answer = StrokeSearch.of(new Plain()).answer(StrokeQuery.best(5));

        assertThat(answer.plans()).extracting(StrokePlan::cost).containsExactly(0L, 5L);
        assertThat(answer.plans().get(0).strokes()).hasSize(1);
    }

    @Test
    void aLatticeThatNoStrokesCrossHasNoPlan() {
        StrokeAnswer answer = StrokeSearch.of(new Plain() {
                    @Override
                    public int amount(int from, int to) {
                        return 21 * (to - from);
                    }
                })
                .answer(StrokeQuery.best(5));

        assertThat(answer.plans()).isEmpty();
        assertThat(answer.complete()).isTrue();
    }

    @Test
    void aStrokeAcrossALockedTurnIsRuledOut() {
        StrokeAnswer answer = StrokeSearch.of(new Plain() {
                    @Override
                    public long strokeCost(int from, int to, Direction direction) {
                        return from < 1 && to > 1 ? IMPOSSIBLE : 0;
                    }
                })
                .answer(StrokeQuery.best(5));

        assertThat(answer.plans()).singleElement().satisfies(plan -> assertThat(plan.strokes())
                .hasSize(2));
    }

    @Test
    void totalsThatMightOverflowAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public long turnCost(int place, Direction next) {
                        return LayeredGraph.LARGEST_TOTAL / 2;
                    }
                }))
                .withMessageContaining("allowed: 0 to " + LayeredGraph.LARGEST_TOTAL);
    }

    @Test
    void negativeCostsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public long endCost(int place, Direction direction, int cell) {
                        return -2;
                    }
                }))
                .withMessage("end cost is -2; allowed: 0 or more, or -1 (impossible)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public long pairCost(int first, int middle, int last) {
                        return -1;
                    }
                }))
                .withMessage("cost of the pair 0, 1, 2 is -1; allowed: 0 or more");
    }

    @Test
    void cellsAndAmountsOutOfOrderAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public int firstLevel(int cell) {
                        return 0;
                    }
                }))
                .withMessage("first level of cell 1 is 0; allowed: 1 to 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public int amount(int from, int to) {
                        return 10 - to;
                    }
                }))
                .withMessage("amount from 0 to 2 is 8; allowed: 9 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public int furthest(int from) {
                        return from;
                    }
                }))
                .withMessage("furthest place from 0 is 0; allowed: 1 to 2");
    }

    @Test
    void startsOutsideTheCapacityOrTwiceTheSameAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public List<Start> starts() {
                        return List.of(new Start(21, Direction.RISING));
                    }
                }))
                .withMessage("level is 21; allowed: 0 to 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StrokeSearch.of(new Plain() {
                    @Override
                    public List<Start> starts() {
                        return List.of(new Start(0, Direction.RISING), new Start(0, Direction.RISING, 1, 0));
                    }
                }))
                .withMessageContaining("allowed: one per level and direction");
    }
}
