package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.mantice.search.StrokeAnswer;
import org.mantice.search.StrokeLattice;
import org.mantice.search.StrokePlan;
import org.mantice.search.StrokeQuery;
import org.mantice.search.StrokeSearch;

/**
 * Finds the best sets of turns, in order, exact over all places. It searches among the strokes that a lower bound leaves
 * within a slack of the best; whatever costs no more than that slack is then proven, else the slack grows to what the
 * plans found cost, so that nothing outside can be better.
 */
final class StrokeSolver {
    /** First slack in micropoints: two ordinary changes of hand position; grows as needed. */
    private static final long FIRST_SLACK = 2_000_000;

    /** Growth of the slack while too few plans are found. */
    private static final long GROWTH = 4;

    /** The largest search in pairs of strokes; an estimate, about 130 MB with its bound. */
    private static final long MOST_PAIRS = 4_000_000;

    /**
     * What is asked.
     *
     * @param count plans with different turns
     * @param least differences, see {@link StrokeQuery}; 0 for none
     * @param difference over places of the performance
     */
    record Task(int count, int least, StrokeQuery.Difference difference, int labelBudget, BooleanSupplier cancelled) {
        static Task best(int count, BooleanSupplier cancelled) {
            return new Task(count, 0, (from, to, direction) -> 0, StrokeQuery.DEFAULT_LABEL_BUDGET, cancelled);
        }
    }

    /**
     * A plan found.
     *
     * @param places where strokes begin, and at last the end
     * @param startMillilitres in the bellows before the first note
     */
    record Strokes(List<Integer> places, int startMillilitres, long cost, long concessions) {}

    /**
     * What was found.
     *
     * @param proven whether the plans are proven to be the best in this order
     * @param complete whether fewer plans than asked mean that there are no more
     * @param lowerBound the cost below which no plan can be that was not found
     */
    record Solution(List<Strokes> plans, boolean proven, boolean complete, long lowerBound) {
        static final Solution NONE = new Solution(List.of(), true, true, Long.MAX_VALUE);
    }

    private final Ground ground;
    private final StrokePrices kinds;
    private final WeightedPrices prices;
    private final int[] starts;

    StrokeSolver(Ground ground, StrokePrices kinds, WeightedPrices prices, int[] starts) {
        this.ground = ground;
        this.kinds = kinds;
        this.prices = prices;
        this.starts = starts;
    }

    Solution solve(TurnLocks locks, Task task) {
        if (!locks.unmet().isEmpty()) return Solution.NONE;
        Solution strict = solve(new StrokePruning(ground, kinds, prices, locks, starts, false), task, false);
        if (!strict.plans().isEmpty()) return strict;
        Solution giving = solve(new StrokePruning(ground, kinds, prices, locks, starts, true), task, true);
        return new Solution(
                giving.plans(),
                giving.proven() && strict.complete(),
                giving.complete() && strict.complete(),
                giving.lowerBound());
    }

    private Solution solve(StrokePruning pruning, Task task, boolean giving) {
        if (!pruning.reachable()) return Solution.NONE;
        Solution last = new Solution(List.of(), false, false, pruning.best() / 2);
        long slack = FIRST_SLACK;
        while (true) {
            long limit = slack == Long.MAX_VALUE ? slack : pruning.best() + 2 * slack;
            StrokeProblem problem = new StrokeProblem(ground, kinds, prices, pruning, starts, limit, Integer.MAX_VALUE);
            if (problem.pairs() > MOST_PAIRS) return last.plans().isEmpty() ? shortened(pruning, task, giving) : last;
            Solution here = search(problem, task, giving, limit, pruning.bestGives());
            if (here.proven() || slack == Long.MAX_VALUE) return here;
            if (!here.plans().isEmpty()) last = here;
            slack = wider(here, task, pruning, slack);
        }
    }

    private long wider(Solution here, Task task, StrokePruning pruning, long slack) {
        if (here.plans().size() == task.count()) {
            Strokes dearest = here.plans().get(here.plans().size() - 1);
            long needed = (2 * dearest.cost() - pruning.best() + 1) / 2;
            if (dearest.concessions() == pruning.bestGives() && needed > slack) return needed;
            if (dearest.concessions() == pruning.bestGives()) return Long.MAX_VALUE;
        }
        return slack > FIRST_SLACK * 1_000 ? Long.MAX_VALUE : slack * GROWTH;
    }

    /** All places, but only strokes over so few of them that the search stays within memory: nothing is proven. */
    private Solution shortened(StrokePruning pruning, Task task, boolean giving) {
        for (int reach = 256; reach > 2; reach = reach * 2 / 3) {
            StrokeProblem problem = new StrokeProblem(ground, kinds, prices, pruning, starts, Long.MAX_VALUE, reach);
            if (problem.pairs() > MOST_PAIRS) continue;
            Solution found = search(problem, task, giving, Long.MAX_VALUE, 0);
            return new Solution(found.plans(), false, false, pruning.best() / 2);
        }
        return new Solution(List.of(), false, false, pruning.best() / 2);
    }

    private Solution search(StrokeProblem problem, Task task, boolean giving, long limit, long least) {
        StrokeSearch search = StrokeSearch.of(problem);
        int ask = starts.length == 1 ? task.count() : Math.multiplyExact(task.count(), 4) - 3;
        while (true) {
            StrokeQuery query = StrokeQuery.best(ask)
                    .within(Long.MAX_VALUE, giving ? Long.MAX_VALUE : 0)
                    .withLabelBudget(task.labelBudget())
                    .cancelledBy(task.cancelled());
            if (task.least() > 0)
                query = query.differing(task.least(), (from, to, direction) -> task.difference()
                        .of(problem.original(from), problem.original(to), direction));
            StrokeAnswer answer = search.answer(query);
            List<Strokes> distinct = distinct(problem, answer, task.count());
            boolean exhausted = !answer.complete() || answer.plans().size() < ask;
            if (distinct.size() < task.count() && !exhausted) {
                ask = Math.multiplyExact(ask, 4);
                continue;
            }
            return judged(distinct, answer, task, limit, least);
        }
    }

    private Solution judged(List<Strokes> plans, StrokeAnswer answer, Task task, long limit, long least) {
        boolean all = limit == Long.MAX_VALUE;
        boolean searched =
                answer.complete() || answer.proven() == answer.plans().size() && plans.size() == task.count();
        boolean within = plans.size() == task.count()
                && plans.stream().allMatch(plan -> plan.concessions() <= least && 2 * plan.cost() <= limit);
        long bound =
                Math.min(all ? Long.MAX_VALUE : limit / 2, answer.complete() ? Long.MAX_VALUE : answer.costBound());
        return new Solution(plans, searched && (all || within), answer.complete() && all, bound);
    }

    /** Plans with the same turns from different openings are one plan: the first, which is the cheapest. */
    private List<Strokes> distinct(StrokeProblem problem, StrokeAnswer answer, int count) {
        Set<List<Integer>> seen = new HashSet<>();
        List<Strokes> plans = new ArrayList<>();
        for (StrokePlan plan : answer.plans()) {
            List<Integer> places = new ArrayList<>();
            for (StrokePlan.Stroke stroke : plan.strokes()) places.add(problem.original(stroke.from()));
            places.add(ground.last());
            if (plans.size() == count || !seen.add(places)) continue;
            StrokeLattice.Start start = problem.starts().get(plan.start());
            plans.add(new Strokes(List.copyOf(places), start.level(), plan.cost(), plan.concessions()));
        }
        return plans;
    }
}
