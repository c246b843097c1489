package org.mantice.search;

import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * What is asked of a {@link StrokeSearch}.
 *
 * @param count how many plans, 0 or more
 * @param leastDifferences only plans whose strokes have at least so many differences together, 0 to 8
 * @param difference differences of one stroke from whatever the plans are to differ from
 * @param costLimit no dearer plans than this
 * @param concessionLimit no plans that concede more than this, packed; worth setting to the best plan's concessions
 *     together with the other limits, which might otherwise be met by conceding more
 * @param labelBudget how many labels the exact search may make before it falls back to cells, 1 or more
 * @param cancelled asked now and then; the search stops when it says true
 */
public record StrokeQuery(
        int count,
        int leastDifferences,
        Difference difference,
        long costLimit,
        long concessionLimit,
        int labelBudget,
        BooleanSupplier cancelled) {
    /** Estimate: about 40 MB. */
    public static final int DEFAULT_LABEL_BUDGET = 600_000;

    /** Largest number of differences that can be asked for. */
    public static final int MOST_DIFFERENCES = 8;

    /** Counts differences of one stroke. */
    @FunctionalInterface
    public interface Difference {
        /** Number of differences that this stroke brings, 0 or more. */
        int of(int from, int to, StrokeLattice.Direction direction);
    }

    public StrokeQuery {
        if (count < 0) throw new IllegalArgumentException("count is " + count + "; allowed: 0 or more");
        if (leastDifferences < 0 || leastDifferences > MOST_DIFFERENCES)
            throw new IllegalArgumentException(
                    "leastDifferences is " + leastDifferences + "; allowed: 0 to " + MOST_DIFFERENCES);
        if (costLimit < 0) throw new IllegalArgumentException("costLimit is " + costLimit + "; allowed: 0 or more");
        if (concessionLimit < 0)
            throw new IllegalArgumentException("concessionLimit is " + concessionLimit + "; allowed: 0 or more");
        if (labelBudget < 1)
            throw new IllegalArgumentException("labelBudget is " + labelBudget + "; allowed: 1 or more");
        Objects.requireNonNull(difference, "difference");
        Objects.requireNonNull(cancelled, "cancelled");
    }

    /** The {@code count} best plans. */
    public static StrokeQuery best(int count) {
        return new StrokeQuery(
                count,
                0,
                (from, to, direction) -> 0,
                Long.MAX_VALUE,
                Long.MAX_VALUE,
                DEFAULT_LABEL_BUDGET,
                Cancellation.NEVER);
    }

    /** Only plans with at least {@code least} differences. */
    public StrokeQuery differing(int least, Difference from) {
        return new StrokeQuery(count, least, from, costLimit, concessionLimit, labelBudget, cancelled);
    }

    /** Only plans that cost and concede at most so much. */
    public StrokeQuery within(long cost, long concessions) {
        return new StrokeQuery(count, leastDifferences, difference, cost, concessions, labelBudget, cancelled);
    }

    public StrokeQuery withLabelBudget(int labels) {
        return new StrokeQuery(count, leastDifferences, difference, costLimit, concessionLimit, labels, cancelled);
    }

    public StrokeQuery cancelledBy(BooleanSupplier stop) {
        return new StrokeQuery(count, leastDifferences, difference, costLimit, concessionLimit, labelBudget, stop);
    }
}
