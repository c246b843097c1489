package org.mantice.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.mantice.search.StrokeLattice.Direction;
import org.mantice.search.StrokePlan.Stroke;

/**
 * The best plans of a {@link StrokeLattice}, in order, none twice, exact on whole levels: by least concessions, then
 * cost; ties by the first decision where they differ (start in the order of the lattice, earlier end of stroke, no
 * shift before shifts, rising before falling). Only plans that concede as little as the first are given.
 *
 * <p>Best-first search (A*) over labels (stroke, direction, exact level), bounded below by {@link StrokeBound}: at most
 * as many labels per state are followed as plans are asked for, which loses none. Where concessions are possible, it is
 * first tried without any. Past the label budget the search goes on over cells of levels, see {@link StrokeGrid}; then
 * {@link StrokeAnswer#proven} tells how many plans are the best, and {@link StrokeAnswer#gap} how far the rest may be
 * from it.
 *
 * <p>The tables and the bound are made once; queries with other counts, differences, limits and budgets use them again.
 * To the outside immutable, and safe for several threads.
 */
public final class StrokeSearch {
    private final StrokeTables tables;
    private final List<StrokeLattice.Start> starts;
    private final StrokeBound[] plainBounds = new StrokeBound[2];

    private StrokeSearch(StrokeLattice lattice) {
        tables = new StrokeTables(lattice);
        starts = List.of(tables.starts);
    }

    /**
     * Asks the lattice everything once.
     *
     * @throws IllegalArgumentException if it answers outside its contract or totals might overflow
     */
    public static StrokeSearch of(StrokeLattice lattice) {
        return new StrokeSearch(lattice);
    }

    /**
     * Searches.
     *
     * @throws java.util.concurrent.CancellationException if cancelled
     * @throws ArithmeticException if the concessions of one level exceed what the lattice's scale can count
     */
    public StrokeAnswer answer(StrokeQuery query) {
        if (query.count() == 0) return new StrokeAnswer(List.of(), 0, true, 0, ConcessionScale.NONE, 0);
        StrokeAnswer strict = new Run(query, false).answer();
        boolean mayConcede = tables.conceding && query.concessionLimit() > ConcessionScale.NONE;
        if (!mayConcede || !strict.plans().isEmpty()) return strict;
        return new Run(query, true).answer();
    }

    /** Number of groups of levels that the bound tells apart, where nothing gives way. */
    public int levelGroups() {
        return plainBound(false, Cancellation.NEVER).groups();
    }

    /** The bound that all queries share, made when it is first needed. */
    private synchronized StrokeBound plainBound(boolean giving, BooleanSupplier cancelled) {
        int index = giving ? 1 : 0;
        if (plainBounds[index] == null) plainBounds[index] = new StrokeBound(tables, giving, null, 1, cancelled);
        return plainBounds[index];
    }

    /** One search, with or without concessions. */
    private final class Run {
        /** Labels taken between two looks at the cancellation. */
        private static final int PATIENCE = 1024;

        private final StrokeQuery query;
        private final boolean giving;
        private final int[] differences;
        private final int depth;
        private final CombinedBound bound;
        private final LabelQueue labels = new LabelQueue();
        private final LabelCounts taken = new LabelCounts();
        private final List<StrokePlan> found = new ArrayList<>();

        Run(StrokeQuery query, boolean giving) {
            this.query = query;
            this.giving = giving;
            this.depth = query.leastDifferences() + 1;
            this.differences = depth == 1 ? null : differences();
            StrokeBound counting =
                    depth == 1 ? null : new StrokeBound(tables, giving, differences, depth, query.cancelled());
            this.bound = new CombinedBound(plainBound(giving, query.cancelled()), counting);
        }

        StrokeAnswer answer() {
            for (int start = 0; start < starts.size(); start++) addStart(start);
            for (long turns = 0; !labels.isEmpty(); turns++) {
                if (turns % PATIENCE == 0) Cancellation.check(query.cancelled());
                if (isWorseThanFound(labels.peek())) break;
                if (labels.size() > query.labelBudget()) return overBudget();
                int label = labels.take();
                int move = labels.move(label);
                if (move >= 0 && tables.to[move >> 1] == tables.lastPlace()) {
                    found.add(plan(label));
                    if (found.size() == query.count()) break;
                } else if (move < 0 || taken.count(key(label)) <= query.count()) {
                    expand(label);
                }
            }
            return new StrokeAnswer(found, found.size(), true, 0, ConcessionScale.NONE, labels.size());
        }

        /** Whether the label concedes more than the plans found, so that these are all. */
        private boolean isWorseThanFound(int label) {
            return !found.isEmpty() && labels.totalGives(label) > found.get(0).concessions();
        }

        private long key(int label) {
            long state = (long) labels.move(label) * depth + labels.missing(label);
            return state * (tables.capacity + 1L) + labels.level(label);
        }

        private void addStart(int start) {
            var one = starts.get(start);
            if (bound.startCost(start) >= StrokeBound.UNREACHABLE) return;
            long total = one.cost() + bound.startCost(start);
            long totalGiven = tables.scale.add(one.concessions(), bound.startGives(start));
            if (isBeyondLimits(one.cost(), total, totalGiven)) return;
            labels.add(
                    -1,
                    LabelQueue.NO_MOVE,
                    start,
                    one.level(),
                    depth - 1,
                    one.cost(),
                    one.concessions(),
                    total,
                    totalGiven);
        }

        private void expand(int label) {
            int move = labels.move(label);
            if (move < 0) {
                int direction = starts.get(labels.choice(label)).direction().ordinal();
                follow(label, 0, direction, StrokePlan.NO_SHIFT, labels.level(label), 0, ConcessionScale.NONE);
                return;
            }
            int place = tables.to[move >> 1];
            int direction = move & 1;
            turn(label, place, 1 - direction, StrokePlan.NO_SHIFT, labels.level(label), 0, ConcessionScale.NONE);
            for (int index = 0; index < tables.shifts[place].length; index++) {
                var shift = tables.shifts[place][index];
                if (!shift.reaches(labels.level(label)) || !open(shift.concessions())) continue;
                follow(label, place, direction, index, shift.level(), shift.cost(), shift.concessions());
                turn(label, place, 1 - direction, index, shift.level(), shift.cost(), shift.concessions());
            }
        }

        private boolean open(long concessions) {
            return giving || concessions == ConcessionScale.NONE;
        }

        private void turn(int label, int place, int direction, int shift, int level, long cost, long gives) {
            long turn = tables.turnCost[2 * place + direction];
            long turnGives = tables.turnGives[2 * place + direction];
            if (turn < 0 || !open(turnGives)) return;
            follow(label, place, direction, shift, level, cost + turn, tables.scale.add(gives, turnGives));
        }

        /** Adds a label for every stroke from {@code place} in {@code direction}. */
        private void follow(int label, int place, int direction, int shift, int level, long cost, long gives) {
            int before = labels.move(label);
            for (int stroke = tables.first[place]; stroke < tables.first[place + 1]; stroke++) {
                int to = direction == 0 ? level + tables.amount[stroke] : level - tables.amount[stroke];
                if (to < 0 || to > tables.capacity) break;
                int move = 2 * stroke + direction;
                int end = (2 * tables.to[stroke] + direction) * tables.cells + tables.cellOf[to];
                if (tables.strokeCost[move] < 0 || tables.endCost[end] < 0) continue;
                if (!open(tables.strokeGives[move]) || !open(tables.endGives[end])) continue;
                int brings = differences == null ? 0 : differences[move];
                int missing = Math.max(0, labels.missing(label) - brings);
                long ahead = bound.cost(move, missing, to);
                if (ahead >= StrokeBound.UNREACHABLE) continue;
                long pair = before < 0 ? 0 : tables.pair(before >> 1, stroke);
                long spent = labels.cost(label) + cost + pair + tables.strokeCost[move] + tables.endCost[end];
                long given = sum(labels.gives(label), gives, tables.strokeGives[move], tables.endGives[end]);
                long totalGiven = giving ? tables.scale.add(given, bound.gives(move, missing, to)) : 0;
                if (isBeyondLimits(spent, spent + ahead, totalGiven)) continue;
                labels.add(label, move, shift, to, missing, spent, given, spent + ahead, totalGiven);
            }
        }

        /** A plan that concedes more than the least may cost less than the total that goes with the least. */
        private boolean isBeyondLimits(long spent, long total, long totalGiven) {
            if (totalGiven > query.concessionLimit() || spent > query.costLimit()) return true;
            boolean least = !giving || totalGiven == query.concessionLimit();
            return least && total > query.costLimit();
        }

        private long sum(long a, long b, long c, long d) {
            return giving ? tables.scale.add(tables.scale.add(a, b), tables.scale.add(c, d)) : ConcessionScale.NONE;
        }

        private int[] differences() {
            int[] counts = new int[2 * tables.strokes()];
            for (int stroke = 0; stroke < tables.strokes(); stroke++)
                for (Direction direction : Direction.values()) {
                    int one = query.difference().of(tables.from[stroke], tables.to[stroke], direction);
                    if (one < 0) throw new IllegalArgumentException("difference is " + one + "; allowed: 0 or more");
                    counts[2 * stroke + direction.ordinal()] = Math.min(one, query.leastDifferences());
                }
            return counts;
        }

        private StrokePlan plan(int last) {
            List<Stroke> strokes = new ArrayList<>();
            int label = last;
            for (; labels.move(label) >= 0; label = labels.parent(label)) {
                int stroke = labels.move(label) >> 1;
                Direction direction = Direction.values()[labels.move(label) & 1];
                int change = direction == Direction.RISING ? tables.amount[stroke] : -tables.amount[stroke];
                strokes.add(new Stroke(
                        tables.from[stroke],
                        tables.to[stroke],
                        direction,
                        labels.choice(label),
                        labels.level(label) - change,
                        labels.level(label)));
            }
            Collections.reverse(strokes);
            return new StrokePlan(labels.choice(label), strokes, labels.cost(last), labels.gives(last));
        }

        /** What is found so far is proven; the rest comes from the grid. */
        private StrokeAnswer overBudget() {
            int next = labels.peek();
            long costBound = labels.totalCost(next);
            long concessionBound = labels.totalGives(next);
            int proven = found.size();
            List<StrokePlan> plans = new ArrayList<>(found);
            for (StrokePlan plan : new StrokeGrid(tables, giving, differences, depth, bound, query).plans()) {
                if (plans.size() == query.count()) break;
                if (!plans.isEmpty() && plan.concessions() > plans.get(0).concessions()) break;
                if (!found.contains(plan)) plans.add(plan);
            }
            return new StrokeAnswer(plans, proven, false, costBound, concessionBound, labels.size());
        }
    }
}
