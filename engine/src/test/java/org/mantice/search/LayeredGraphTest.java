package org.mantice.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class LayeredGraphTest {
    private static final Transition ONE = Transition.builder(1, 1).edge(0, 0, 3).build();

    @Test
    void aPathCostsItsNodesAndEdges() {
        LayeredGraph graph = LayeredGraph.builder().first(2).next(ONE, 5).build();

        assertThat(graph.cost(0, 0)).hasValue(10);
    }

    @Test
    void anImpossibleMoveHasNoCost() {
        Transition upOnly = Transition.builder(1, 2).edge(0, 1, 0).build();
        LayeredGraph graph = LayeredGraph.builder().first(0).next(upOnly, 0, 0).build();

        assertThat(graph.cost(0, 0)).isEmpty();
        assertThat(graph.concessions(0, 0)).isEmpty();
        assertThat(graph.cost(0, 1)).hasValue(0);
    }

    @Test
    void oneTransitionServesManyStages() {
        LayeredGraph.Builder graph = LayeredGraph.builder().first(0);
        for (int stage = 1; stage < 100; stage++) graph.next(ONE, 1);

        assertThat(ShortestPaths.of(graph.build()).best().orElseThrow().cost()).isEqualTo(99 * 4);
    }

    @Test
    void totalsThatMightOverflowAreRefused() {
        Transition dear = Transition.builder(1, 1)
                .edge(0, 0, LayeredGraph.LARGEST_TOTAL / 2)
                .build();

        assertThat(LayeredGraph.builder()
                        .first(0)
                        .next(dear, 1)
                        .next(dear, 0)
                        .build()
                        .stages())
                .isEqualTo(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LayeredGraph.builder()
                        .first(0)
                        .next(dear, 1)
                        .next(dear, 1)
                        .build())
                .withMessageContaining("allowed: 0 to " + LayeredGraph.LARGEST_TOTAL);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LayeredGraph.builder()
                        .first(Long.MAX_VALUE)
                        .next(ONE, Long.MAX_VALUE)
                        .build())
                .withMessageContaining("allowed: 0 to " + LayeredGraph.LARGEST_TOTAL);
    }

    @Test
    void negativeCostsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LayeredGraph.builder().first(0, -1))
                .withMessage("cost of state 1 of stage 0 is -1; allowed: 0 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ONE.withCosts(new long[] {-1}))
                .withMessage("cost of edge 0 is -1; allowed: 0 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transition.builder(1, 1).edge(0, 0, -5));
    }

    @Test
    void edgesOutOfOrderAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transition.builder(2, 2).edge(1, 0, 0).edge(0, 0, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transition.builder(2, 2).edge(0, 1, 0).edge(0, 1, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transition.builder(2, 2).edge(0, 2, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transition.of(new int[] {0, 2}, new int[] {1, 0}, new long[2], 2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transition.of(new int[] {0, 1}, new int[] {0, 1}, new long[2], 2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Transition.of(new int[] {0, 9, 2}, new int[] {0, 1}, new long[2], 2));
    }

    @Test
    void aTransitionThatDoesNotFitIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LayeredGraph.builder().first(0, 0).next(ONE, 0))
                .withMessage("transition to stage 1 joins 1 and 1 states; allowed: 2 and 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LayeredGraph.builder().build())
                .withMessage("stages is 0; allowed: 1 or more");
    }

    @Test
    void otherCostsOfAnotherShapeAreRefused() {
        LayeredGraph graph = LayeredGraph.builder().first(0).next(ONE, 0).build();
        Transition none = Transition.builder(1, 1).build();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> graph.withCosts(List.of(new long[1], new long[1]), List.of(none)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> graph.withCosts(List.of(new long[1], new long[2]), List.of(ONE)));
        assertThatIllegalArgumentException().isThrownBy(() -> graph.withCosts(List.of(new long[1]), List.of()));
    }

    @Test
    void edgesBuiltOneByOneEqualCompressedRows() {
        Transition built = Transition.builder(3, 4)
                .edge(0, 1, 5)
                .edge(0, 3, 6)
                .edge(2, 0, 7)
                .build();

        assertThat(built.sameShape(Transition.of(new int[] {0, 2, 2, 3}, new int[] {1, 3, 0}, new long[] {5, 6, 7}, 4)))
                .isTrue();
        assertThat(built.edge(0, 3)).isEqualTo(1);
        assertThat(built.edge(1, 0)).isEqualTo(-1);
        assertThat(built.endEdge(1)).isEqualTo(built.firstEdge(2));
        assertThat(built.cost(2)).isEqualTo(7);
    }

    @Test
    void concessionsCompareWorstLevelFirst() {
        ConcessionScale scale = new ConcessionScale(5);

        assertThat(scale.one(0)).isGreaterThan(scale.pack(0, 4095, 4095, 4095, 4095));
        assertThat(scale.count(scale.pack(1, 2, 3, 4, 5), 3)).isEqualTo(4);
        assertThat(scale.add(scale.pack(1, 2, 3, 4, 5), scale.one(4))).isEqualTo(scale.pack(1, 2, 3, 4, 6));
    }

    @Test
    void tooManyConcessionsOfOneLevelAreRefused() {
        ConcessionScale scale = new ConcessionScale(5);
        for (int level = 0; level < 5; level++) {
            int[] full = new int[5];
            full[level] = 4095;
            long packed = scale.pack(full);
            long one = scale.one(level);

            assertThatExceptionOfType(ArithmeticException.class)
                    .isThrownBy(() -> scale.add(packed, one))
                    .withMessage("more than 4095 concessions of one level");
        }
        assertThatIllegalArgumentException().isThrownBy(() -> scale.pack(0, 0, 0, 0, 4096));
        assertThatIllegalArgumentException().isThrownBy(() -> new ConcessionScale(6));
        assertThat(new ConcessionScale(1).capacity()).isEqualTo((1L << 60) - 1);
    }

    @Test
    void aConcessionOutsideTheScaleIsRefused() {
        Transition beyond =
                Transition.builder(1, 1).edge(0, 0, 0, Long.MAX_VALUE).build();

        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> LayeredGraph.builder().first(0).next(beyond, 0).build());
    }
}
