package org.mantice.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import org.mantice.search.DifferentPath.Answer;
import org.mantice.search.DifferentPath.Requirement;

/**
 * A good path that meets all requirements: each difference is rewarded by a whole number per requirement; the least
 * reward that makes the best path meet a requirement is bisected, one requirement after the other, some rounds long.
 * Every set of rewards also bounds the cost of any path that meets the requirements (Lagrangian relaxation).
 */
final class RewardSearch {
    /** Rounds over all requirements. Estimate: later rounds seldom change anything. */
    private static final int ROUNDS = 3;

    private final CountedEdges edges;
    private final List<Requirement> requirements;
    private final long costLimit;
    private final BooleanSupplier cancelled;
    private final long[] reward;
    private final long[] toGo;
    private Optional<Path> best = Optional.empty();
    private long bound;

    RewardSearch(CountedEdges edges, List<Requirement> requirements, long costLimit, BooleanSupplier cancelled) {
        this.edges = edges;
        this.requirements = requirements;
        this.costLimit = costLimit;
        this.cancelled = cancelled;
        this.reward = new long[requirements.size()];
        this.toGo = new long[edges.states()];
    }

    Answer answer() {
        int[] differences = search();
        long highest = highestReward();
        for (int round = 0; round < ROUNDS && !meetsAll(differences); round++)
            for (int index = 0; index < reward.length; index++)
                if (differences[index] < requirements.get(index).least()) differences = raise(index, highest);
        boolean proven = best.isPresent() ? best.get().cost() <= bound : bound > costLimit;
        return new Answer(best, proven, OptionalLong.of(bound));
    }

    /** Bisects the least reward, above the present one, that makes the best path meet a requirement. */
    private int[] raise(int index, long highest) {
        long low = reward[index];
        long high = highest;
        reward[index] = high;
        int[] differences = search();
        if (differences[index] < requirements.get(index).least()) return differences;
        while (high - low > 1) {
            reward[index] = low + (high - low) / 2;
            int[] now = search();
            if (now[index] < requirements.get(index).least()) low = reward[index];
            else {
                high = reward[index];
                differences = now;
            }
        }
        reward[index] = high;
        return differences;
    }

    /** More than all that a path within the limit may cost above the best, as far as totals allow. */
    private long highestReward() {
        long spread = Math.min(costLimit, LayeredGraph.LARGEST_TOTAL) - bound + 1;
        long gains = (long) DifferentPath.MOST_DIFFERENCES * edges.graph.stages() * requirements.size();
        return Math.max(1, Math.min(spread, LayeredGraph.LARGEST_TOTAL / gains));
    }

    private boolean meetsAll(int[] differences) {
        for (int index = 0; index < differences.length; index++)
            if (differences[index] < requirements.get(index).least()) return false;
        return true;
    }

    /** The best path under the present rewards; keeps it if it meets all requirements, and returns its differences. */
    private int[] search() {
        Cancellation.check(cancelled);
        Path path = bestPath();
        int[] differences =
                requirements.stream().mapToInt(one -> one.difference().of(path)).toArray();
        boolean better = best.isEmpty() || path.compareTo(best.get()) < 0;
        if (meetsAll(differences) && path.cost() <= costLimit && better) best = Optional.of(path);
        return differences;
    }

    private Path bestPath() {
        Arrays.fill(toGo, CostToGo.UNREACHABLE);
        for (int state = toGo.length - 1; state >= 0; state--)
            for (int edge = edges.start[state]; edge < edges.start[state + 1]; edge++)
                toGo[state] = Math.min(toGo[state], ahead(edge));
        int first = -1;
        for (int state = 0; state < edges.mayStart.length; state++)
            if (edges.mayStart[state]
                    && toGo[state] < CostToGo.UNREACHABLE / 2
                    && (first < 0 || toGo[state] < toGo[first])) first = state;
        raiseBound(toGo[first]);
        List<Integer> taken = new ArrayList<>();
        for (int state = first; state >= 0; state = edges.target[taken.get(taken.size() - 1)]) {
            int edge = edges.start[state];
            while (ahead(edge) != toGo[state]) edge++;
            taken.add(edge);
        }
        return edges.path(first, taken.stream().mapToInt(edge -> edge).toArray());
    }

    private void raiseBound(long value) {
        long sum = value;
        for (int index = 0; index < reward.length; index++)
            sum += reward[index] * requirements.get(index).least();
        bound = Math.max(bound, sum);
    }

    private long ahead(int edge) {
        long own = edges.cost[edge];
        for (int index = 0; index < reward.length; index++) own -= reward[index] * edges.brings[index][edge];
        return edges.target[edge] < 0 ? own : own + toGo[edges.target[edge]];
    }
}
