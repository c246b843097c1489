package org.mantice.search;

import java.util.Arrays;

/**
 * One state for every stage of a {@link LayeredGraph}, with its total cost and packed concessions. Ordered by
 * concessions, then cost, then state by state from the first stage on. Immutable.
 */
public final class Path implements Comparable<Path> {
    final int[] states;
    private final long cost;
    private final long concessions;

    Path(int[] states, long cost, long concessions) {
        this.states = states;
        this.cost = cost;
        this.concessions = concessions;
    }

    public int stages() {
        return states.length;
    }

    public int state(int stage) {
        return states[stage];
    }

    /** The states, as a new array. */
    public int[] toArray() {
        return states.clone();
    }

    public long cost() {
        return cost;
    }

    /** What gave way on this path, packed by the graph's {@link ConcessionScale}. */
    public long concessions() {
        return concessions;
    }

    @Override
    public int compareTo(Path other) {
        int order = Long.compare(concessions, other.concessions);
        if (order == 0) order = Long.compare(cost, other.cost);
        return order != 0 ? order : Arrays.compare(states, other.states);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Path path
                && cost == path.cost
                && concessions == path.concessions
                && Arrays.equals(states, path.states);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(states) + Long.hashCode(cost);
    }

    @Override
    public String toString() {
        return cost + (concessions == 0 ? "" : " conceding " + concessions) + " " + Arrays.toString(states);
    }
}
