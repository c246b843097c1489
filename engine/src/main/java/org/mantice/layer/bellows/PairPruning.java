package org.mantice.layer.bellows;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Sharpens {@link StrokePruning} by the price of neighbouring strokes: keeps the strokes that some sequence of strokes
 * within the limit contains, the balance of the bellows still left out of account. Time: pairs of strokes.
 */
final class PairPruning {
    private final WeightedPrices prices;
    private final int[] places;
    private final int[] furthest;
    /** First stroke from every place, in the numbering of this class. */
    private final int[] first;

    private final int[] kind;
    /** Doubled, as in {@link StrokePruning}. */
    private final long[] cost;

    private final long[] before;
    private final long[] after;

    /**
     * @param places kept so far, ascending
     * @param furthest for each of them the last one where a stroke may end
     */
    PairPruning(StrokePruning pruning, WeightedPrices prices, int[] places, int[] furthest, long limit) {
        this.prices = prices;
        this.places = places;
        this.furthest = furthest;
        this.first = new int[places.length];
        for (int from = 0; from + 1 < places.length; from++) first[from + 1] = first[from] + furthest[from] - from;
        int strokes = first[places.length - 1];
        this.kind = new int[strokes];
        this.cost = new long[strokes];
        this.before = new long[strokes];
        this.after = new long[strokes];
        for (int from = 0; from + 1 < places.length; from++)
            for (int to = from + 1; to <= furthest[from]; to++) {
                int stroke = stroke(from, to);
                boolean within = pruning.isWithin(places[from], places[to], limit);
                cost[stroke] = within ? pruning.cost(places[from], places[to]) : StrokePruning.UNREACHABLE;
                if (within) kind[stroke] = prices.kind(places[from], places[to]);
            }
        forward();
        backward();
    }

    private int stroke(int from, int to) {
        return first[from] + to - from - 1;
    }

    private boolean isOpen(int stroke) {
        return cost[stroke] < StrokePruning.UNREACHABLE;
    }

    private void forward() {
        Arrays.fill(before, StrokePruning.UNREACHABLE);
        for (int to = 1; to <= furthest[0]; to++) before[stroke(0, to)] = cost[stroke(0, to)];
        for (int from = 0; from + 1 < places.length; from++)
            for (int middle = from + 1; middle <= furthest[from]; middle++) {
                int one = stroke(from, middle);
                if (!isOpen(one) || before[one] >= StrokePruning.UNREACHABLE || middle + 1 == places.length) continue;
                for (int to = middle + 1; to <= furthest[middle]; to++) {
                    int two = stroke(middle, to);
                    if (!isOpen(two)) continue;
                    long sum = before[one] + 2 * prices.pairOfKinds(kind[one], kind[two]) + cost[two];
                    before[two] = Math.min(before[two], sum);
                }
            }
    }

    /** What follows after a stroke. */
    private void backward() {
        Arrays.fill(after, StrokePruning.UNREACHABLE);
        for (int from = places.length - 2; from >= 0; from--)
            for (int middle = from + 1; middle <= furthest[from]; middle++) {
                int one = stroke(from, middle);
                if (!isOpen(one)) continue;
                if (middle + 1 == places.length) after[one] = 0;
                for (int to = middle + 1; middle + 1 < places.length && to <= furthest[middle]; to++) {
                    int two = stroke(middle, to);
                    if (!isOpen(two) || after[two] >= StrokePruning.UNREACHABLE) continue;
                    long sum = 2 * prices.pairOfKinds(kind[one], kind[two]) + cost[two] + after[two];
                    after[one] = Math.min(after[one], sum);
                }
            }
    }

    /** Numbers of the strokes kept, by the numbering of {@link StrokePrices}. */
    BitSet kept(StrokePrices kinds, long limit) {
        BitSet kept = new BitSet();
        for (int from = 0; from + 1 < places.length; from++)
            for (int to = from + 1; to <= furthest[from]; to++) {
                int stroke = stroke(from, to);
                if (before[stroke] >= StrokePruning.UNREACHABLE || after[stroke] >= StrokePruning.UNREACHABLE) continue;
                if (before[stroke] + after[stroke] <= limit) kept.set(kinds.number(places[from], places[to]));
            }
        return kept;
    }
}
