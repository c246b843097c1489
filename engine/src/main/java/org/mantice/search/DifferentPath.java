package org.mantice.search;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * The best path that differs enough from earlier ones. It concedes as little as the best path of all.
 *
 * <p>Exact where a counter of the differences still missing can be carried in the state: for every requirement a factor
 * of {@code least + 1}, together at most {@link #MOST_COUNTERS}; so for one requirement always, for two of up to eight
 * differences as a rule. Time and memory are those of one pass times that factor. Otherwise differences are rewarded by
 * whole numbers, found by bisection; every path found is checked again, and the answer says whether it happens to be
 * proven (its cost equals the bound from the rewards) or is only good.
 */
public final class DifferentPath {
    /** Largest product of counters carried in the state. */
    static final int MOST_COUNTERS = 100;

    /** Largest number of differences that can be asked for. */
    public static final int MOST_DIFFERENCES = 8;

    /** Largest table of an exact search. Estimate: 64 MB. */
    private static final long LARGEST_TABLE = 8_000_000;

    private DifferentPath() {}

    /**
     * So many differences at least.
     *
     * @param difference counts them
     * @param least 0 to {@link #MOST_DIFFERENCES}
     */
    public record Requirement(PathDifference difference, int least) {
        public Requirement {
            Objects.requireNonNull(difference, "difference");
            if (least < 0 || least > MOST_DIFFERENCES)
                throw new IllegalArgumentException("least is " + least + "; allowed: 0 to " + MOST_DIFFERENCES);
        }

        boolean isMetBy(Path path) {
            return difference.of(path) >= least;
        }
    }

    /**
     * What was found.
     *
     * @param path the best path that meets the requirements; empty if none does or, unless {@code proven}, if none was
     *     found
     * @param proven whether there is no better one, or none at all
     * @param costBound no path that meets the requirements costs less than this; empty where there is none
     */
    public record Answer(Optional<Path> path, boolean proven, OptionalLong costBound) {}

    /**
     * Searches.
     *
     * @param among the paths to choose from, with their restriction
     * @param requirements all of them must be met
     * @param costLimit no dearer path is looked at; the lower, the faster
     * @param cancelled asked now and then; the search stops when it says true
     * @throws java.util.concurrent.CancellationException if stopped
     */
    public static Answer best(
            ShortestPaths among, List<Requirement> requirements, long costLimit, BooleanSupplier cancelled) {
        if (costLimit < 0) throw new IllegalArgumentException("costLimit is " + costLimit + "; allowed: 0 or more");
        Optional<Path> best = among.best();
        if (best.isEmpty() || best.get().cost() > costLimit)
            return new Answer(Optional.empty(), true, OptionalLong.empty());
        if (requirements.stream().allMatch(one -> one.isMetBy(best.get())))
            return new Answer(best, true, OptionalLong.of(best.get().cost()));
        CountedEdges edges = new CountedEdges(among, requirements, costLimit, cancelled);
        if (counters(requirements) * edges.states() > LARGEST_TABLE || counters(requirements) > MOST_COUNTERS)
            return new RewardSearch(edges, requirements, costLimit, cancelled).answer();
        Optional<Path> found =
                new CounterSearch(edges, requirements, cancelled).path().filter(path -> path.cost() <= costLimit);
        return new Answer(
                found, true, found.map(path -> OptionalLong.of(path.cost())).orElse(OptionalLong.empty()));
    }

    private static long counters(List<Requirement> requirements) {
        long product = 1;
        for (Requirement one : requirements) product = Math.min(MOST_COUNTERS + 1, product * (one.least() + 1));
        return product;
    }
}
