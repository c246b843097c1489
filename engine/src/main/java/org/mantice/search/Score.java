package org.mantice.search;

/**
 * What a path concedes and costs; ordered by concessions, then cost.
 *
 * @param concessions packed by the graph's {@link ConcessionScale}
 * @param cost total cost
 */
public record Score(long concessions, long cost) implements Comparable<Score> {
    @Override
    public int compareTo(Score other) {
        int order = Long.compare(concessions, other.concessions);
        return order != 0 ? order : Long.compare(cost, other.cost);
    }
}
