package org.mantice.search;

import java.util.Arrays;

/**
 * The moves between one stage of a {@link LayeredGraph} and the next: edges grouped by source state and, within a
 * source, in ascending order of target state. A move that is not listed is impossible.
 *
 * <p>Immutable, so that one transition may serve many stages with equal contexts. An edge is named by its index,
 * {@code firstEdge(source)} to {@code endEdge(source) - 1}.
 */
public final class Transition {
    final int[] start;
    final int[] target;
    final long[] cost;
    /** Packed concessions per edge, or null when no edge has any. */
    final long[] concessions;

    private final int targets;
    private final long largestCost;

    private Transition(int[] start, int[] target, long[] cost, long[] concessions, int targets) {
        this.start = start;
        this.target = target;
        this.cost = cost;
        this.concessions = concessions;
        this.targets = targets;
        this.largestCost = largest(cost);
    }

    /**
     * Makes a transition from compressed rows; the arrays are copied.
     *
     * @param start index of the first edge of every source, and one last entry: the number of edges
     * @param target target state of every edge, strictly ascending within one source
     * @param cost cost of every edge, 0 or more
     * @param targets number of states of the next stage
     * @throws IllegalArgumentException if the arrays do not describe such rows
     */
    public static Transition of(int[] start, int[] target, long[] cost, int targets) {
        int[] rows = start.clone();
        int[] ends = target.clone();
        checkRows(rows, ends, targets);
        return new Transition(rows, ends, checkedCosts(cost, ends.length), null, targets);
    }

    /** Starts a transition that is filled edge by edge. */
    public static Builder builder(int sources, int targets) {
        return new Builder(sources, targets);
    }

    /**
     * The same moves at other costs; the shape is shared, so this is cheap.
     *
     * @param cost cost of every edge, by edge index, 0 or more
     */
    public Transition withCosts(long[] cost) {
        return new Transition(start, target, checkedCosts(cost, target.length), concessions, targets);
    }

    /**
     * The same moves with other concessions.
     *
     * @param packed concessions of every edge, by edge index, packed by the graph's {@link ConcessionScale}
     */
    public Transition withConcessions(long[] packed) {
        if (packed.length != target.length)
            throw new IllegalArgumentException("concessions has " + packed.length
                    + " entries; allowed: one for each of " + target.length + " edges");
        for (long one : packed)
            if (one < 0) throw new IllegalArgumentException("packed concessions are " + one + "; allowed: 0 or more");
        boolean any = Arrays.stream(packed).anyMatch(one -> one != 0);
        return new Transition(start, target, cost, any ? packed.clone() : null, targets);
    }

    public int sources() {
        return start.length - 1;
    }

    public int targets() {
        return targets;
    }

    public int edges() {
        return target.length;
    }

    public int firstEdge(int source) {
        return start[source];
    }

    /** One past the last edge of {@code source}. */
    public int endEdge(int source) {
        return start[source + 1];
    }

    public int target(int edge) {
        return target[edge];
    }

    public long cost(int edge) {
        return cost[edge];
    }

    /** Packed concessions of an edge; {@link ConcessionScale#NONE} where it has none. */
    public long concessions(int edge) {
        return concessions == null ? ConcessionScale.NONE : concessions[edge];
    }

    public boolean hasConcessions() {
        return concessions != null;
    }

    /** The edge from {@code source} to {@code to}, or -1 where that move is impossible. */
    public int edge(int source, int to) {
        int found = Arrays.binarySearch(target, start[source], start[source + 1], to);
        return found < 0 ? -1 : found;
    }

    /** The largest cost of an edge; 0 without edges. */
    public long largestCost() {
        return largestCost;
    }

    boolean sameShape(Transition other) {
        return targets == other.targets
                && (start == other.start || Arrays.equals(start, other.start))
                && (target == other.target || Arrays.equals(target, other.target));
    }

    @Override
    public String toString() {
        return "Transition[" + sources() + " to " + targets + " states, " + edges() + " edges]";
    }

    private static long largest(long[] costs) {
        long largest = 0;
        for (long one : costs) largest = Math.max(largest, one);
        return largest;
    }

    private static long[] checkedCosts(long[] cost, int edges) {
        if (cost.length != edges)
            throw new IllegalArgumentException(
                    "cost has " + cost.length + " entries; allowed: one for each of " + edges + " edges");
        long[] copy = cost.clone();
        for (int edge = 0; edge < copy.length; edge++)
            if (copy[edge] < 0)
                throw new IllegalArgumentException(
                        "cost of edge " + edge + " is " + copy[edge] + "; allowed: 0 or more");
        return copy;
    }

    private static void checkRows(int[] start, int[] target, int targets) {
        if (targets < 0) throw new IllegalArgumentException("targets is " + targets + "; allowed: 0 or more");
        if (start.length == 0 || start[0] != 0 || start[start.length - 1] != target.length)
            throw new IllegalArgumentException(
                    "start is " + brief(start) + "; allowed: from 0 up to the number of edges, " + target.length);
        for (int source = 0; source + 1 < start.length; source++) {
            if (start[source + 1] < start[source] || start[source + 1] > target.length)
                throw new IllegalArgumentException("start of source " + (source + 1) + " is " + start[source + 1]
                        + "; allowed: " + start[source] + " to " + target.length);
            for (int edge = start[source], least = 0; edge < start[source + 1]; least = target[edge] + 1, edge++)
                if (target[edge] < least || target[edge] >= targets)
                    throw new IllegalArgumentException("target of edge " + edge + " from source " + source + " is "
                            + target[edge] + "; allowed: ascending, " + least + " to " + (targets - 1));
        }
    }

    private static String brief(int[] values) {
        if (values.length <= 8) return Arrays.toString(values);
        return values.length + " values ending in " + values[values.length - 1];
    }

    /** Takes edges in ascending order of source, then target. */
    public static final class Builder {
        private final int sources;
        private final int targets;
        private final int[] start;
        private int[] target = new int[16];
        private long[] cost = new long[16];
        private long[] concessions = new long[16];
        private boolean conceded;
        private int edges;
        private int row;

        private Builder(int sources, int targets) {
            if (sources < 0) throw new IllegalArgumentException("sources is " + sources + "; allowed: 0 or more");
            if (targets < 0) throw new IllegalArgumentException("targets is " + targets + "; allowed: 0 or more");
            this.sources = sources;
            this.targets = targets;
            this.start = new int[sources + 1];
        }

        public Builder edge(int source, int to, long edgeCost) {
            return edge(source, to, edgeCost, ConcessionScale.NONE);
        }

        /**
         * Adds an edge.
         *
         * @param packedConcessions what gives way if the edge is taken, packed by the graph's {@link ConcessionScale}
         */
        public Builder edge(int source, int to, long edgeCost, long packedConcessions) {
            if (source < row || source >= sources)
                throw new IllegalArgumentException(
                        "source is " + source + "; allowed: ascending, " + row + " to " + (sources - 1));
            while (row < source) start[++row] = edges;
            int least = edges > start[row] ? target[edges - 1] + 1 : 0;
            if (to < least || to >= targets)
                throw new IllegalArgumentException("target from source " + source + " is " + to
                        + "; allowed: ascending, " + least + " to " + (targets - 1));
            if (edgeCost < 0)
                throw new IllegalArgumentException(
                        "cost of " + source + " to " + to + " is " + edgeCost + "; allowed: 0 or more");
            if (packedConcessions < 0)
                throw new IllegalArgumentException("packed concessions of " + source + " to " + to + " are "
                        + packedConcessions + "; allowed: 0 or more");
            append(to, edgeCost, packedConcessions);
            return this;
        }

        private void append(int to, long edgeCost, long packedConcessions) {
            if (edges == target.length) {
                target = Arrays.copyOf(target, edges * 2);
                cost = Arrays.copyOf(cost, edges * 2);
                concessions = Arrays.copyOf(concessions, edges * 2);
            }
            target[edges] = to;
            cost[edges] = edgeCost;
            concessions[edges++] = packedConcessions;
            conceded |= packedConcessions != 0;
        }

        public Transition build() {
            int[] rows = start.clone();
            Arrays.fill(rows, row + 1, sources + 1, edges);
            return new Transition(
                    rows,
                    Arrays.copyOf(target, edges),
                    Arrays.copyOf(cost, edges),
                    conceded ? Arrays.copyOf(concessions, edges) : null,
                    targets);
        }
    }
}
