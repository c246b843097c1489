package org.mantice.search;

/**
 * The better of two bounds: one over fine groups that ignores the differences asked for, and one over coarser groups
 * that counts them.
 */
final class CombinedBound {
    private final StrokeBound plain;
    /** Null where no differences are asked for. */
    private final StrokeBound counting;

    CombinedBound(StrokeBound plain, StrokeBound counting) {
        this.plain = plain;
        this.counting = counting;
    }

    long cost(int move, int missing, int level) {
        long cost = plain.cost(move, 0, level);
        if (counting == null || cost >= StrokeBound.UNREACHABLE) return cost;
        return higher(
                plain.gives(move, 0, level),
                cost,
                counting.gives(move, missing, level),
                counting.cost(move, missing, level));
    }

    long gives(int move, int missing, int level) {
        long gives = plain.gives(move, 0, level);
        return counting == null ? gives : Math.max(gives, counting.gives(move, missing, level));
    }

    long startCost(int start) {
        long cost = plain.startCost(start);
        if (counting == null || cost >= StrokeBound.UNREACHABLE) return cost;
        return higher(plain.startGives(start), cost, counting.startGives(start), counting.startCost(start));
    }

    long startGives(int start) {
        long gives = plain.startGives(start);
        return counting == null ? gives : Math.max(gives, counting.startGives(start));
    }

    /** The cost of the higher of two pairs of concessions and cost; what is unreachable for one is so altogether. */
    private static long higher(long gives, long cost, long otherGives, long otherCost) {
        if (otherCost >= StrokeBound.UNREACHABLE) return StrokeBound.UNREACHABLE;
        if (gives != otherGives) return gives > otherGives ? cost : otherCost;
        return Math.max(cost, otherCost);
    }
}
