package org.mantice.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.mantice.search.DifferentPath.Requirement;

/**
 * The best path that meets all requirements, exactly: a backward pass over (state, differences still missing). The
 * counters of all requirements are one number, the first requirement's changing fastest.
 */
final class CounterSearch {
    private final CountedEdges edges;
    private final int counters;
    /** What is missing after an edge, by {@code brought * counters + missing}. */
    private final int[] missingAfter;
    /** Counter value of what each edge brings. */
    private final int[] brought;
    /** Cost to go by {@code state * counters + missing}. */
    private final long[] toGo;

    CounterSearch(CountedEdges edges, List<Requirement> requirements, BooleanSupplier cancelled) {
        this.edges = edges;
        int[] radix = requirements.stream().mapToInt(one -> one.least() + 1).toArray();
        this.counters = Arrays.stream(radix).reduce(1, (a, b) -> a * b);
        this.missingAfter = missingAfter(radix);
        this.brought = brought(radix);
        this.toGo = new long[edges.states() * counters];
        fill(cancelled);
    }

    Optional<Path> path() {
        int all = counters - 1;
        int first = -1;
        for (int state = 0; state < edges.mayStart.length; state++)
            if (edges.mayStart[state]
                    && toGo[state * counters + all] < CostToGo.UNREACHABLE
                    && (first < 0 || toGo[state * counters + all] < toGo[first * counters + all])) first = state;
        if (first < 0) return Optional.empty();
        int[] taken = new int[edges.graph.stages()];
        int missing = all;
        for (int stage = 0, state = first; stage < taken.length; stage++) {
            int edge = edges.start[state];
            while (ahead(edge, missing) != toGo[state * counters + missing]) edge++;
            taken[stage] = edge;
            missing = missingAfter[brought[edge] * counters + missing];
            state = edges.target[edge];
        }
        return Optional.of(edges.path(first, taken));
    }

    private void fill(BooleanSupplier cancelled) {
        Arrays.fill(toGo, CostToGo.UNREACHABLE);
        for (int stage = edges.graph.stages() - 1; stage >= 0; stage--) {
            Cancellation.check(cancelled);
            for (int state = edges.graph.offset[stage]; state < edges.graph.offset[stage + 1]; state++)
                for (int edge = edges.start[state]; edge < edges.start[state + 1]; edge++)
                    for (int missing = 0, at = state * counters; missing < counters; missing++, at++)
                        toGo[at] = Math.min(toGo[at], ahead(edge, missing));
        }
    }

    /** Cost to go by an edge. */
    private long ahead(int edge, int missing) {
        int after = missingAfter[brought[edge] * counters + missing];
        if (edges.target[edge] < 0) return after == 0 ? edges.cost[edge] : CostToGo.UNREACHABLE;
        return edges.cost[edge] + toGo[edges.target[edge] * counters + after];
    }

    private int[] missingAfter(int[] radix) {
        int[] table = new int[counters * counters];
        for (int brings = 0; brings < counters; brings++)
            for (int missing = 0; missing < counters; missing++) {
                int after = 0;
                for (int index = radix.length - 1, weight = counters; index >= 0; index--) {
                    weight /= radix[index];
                    int rest = missing / weight % radix[index] - brings / weight % radix[index];
                    after += Math.max(0, rest) * weight;
                }
                table[brings * counters + missing] = after;
            }
        return table;
    }

    private int[] brought(int[] radix) {
        int[] codes = new int[edges.start[edges.states()]];
        for (int edge = 0; edge < codes.length; edge++)
            for (int index = radix.length - 1; index >= 0; index--)
                codes[edge] = codes[edge] * radix[index] + edges.brings[index][edge];
        return codes;
    }
}
