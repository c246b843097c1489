package org.mantice.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.mantice.search.StrokeLattice.Direction;
import org.mantice.search.StrokeLattice.Shift;
import org.mantice.search.StrokePlan.Stroke;

/**
 * Good plans by a forward pass that keeps one label, with its exact level, per stroke, direction and cell of levels:
 * what {@link StrokeSearch} falls back to. Plans are within the limits on the exact levels, but a better one may be
 * lost where two levels share a cell; possibly all. Time: slots × moves that may follow; memory: at most
 * {@link #LARGEST_TABLE} slots.
 */
final class StrokeGrid {
    /** Estimate: about 40 MB. */
    private static final int LARGEST_TABLE = 1_200_000;

    /** Most cells that levels are sorted into. */
    private static final int MOST_CELLS = 200;

    private final StrokeTables tables;
    private final boolean giving;
    private final int[] differences;
    private final int depth;
    private final CombinedBound bound;
    private final StrokeQuery query;
    private final int cells;
    /** By {@code (move * depth + missing) * cells + cell}; an empty slot costs {@link StrokeBound#UNREACHABLE}. */
    private final long[] cost;

    private final long[] gives;
    private final int[] level;
    /** Slot of the stroke before; for a first stroke {@code -1 - start}. */
    private final int[] parent;

    private final int[] shift;

    StrokeGrid(
            StrokeTables tables, boolean giving, int[] differences, int depth, CombinedBound bound, StrokeQuery query) {
        this.tables = tables;
        this.giving = giving;
        this.differences = differences;
        this.depth = depth;
        this.bound = bound;
        this.query = query;
        int rows = 2 * tables.strokes() * depth;
        int most = Math.max(1, LARGEST_TABLE / Math.max(1, rows));
        this.cells = Math.min(most, Math.min(MOST_CELLS, tables.capacity + 1));
        this.cost = new long[rows * cells];
        this.gives = new long[giving ? cost.length : 0];
        this.level = new int[cost.length];
        this.parent = new int[cost.length];
        this.shift = new int[cost.length];
        Arrays.fill(cost, StrokeBound.UNREACHABLE);
    }

    /** At most one plan per last stroke, direction and cell, best first. */
    List<StrokePlan> plans() {
        for (int start = 0; start < tables.starts.length; start++) {
            var one = tables.starts[start];
            if (open(one.concessions()))
                follow(
                        -1 - start,
                        0,
                        one.direction().ordinal(),
                        StrokePlan.NO_SHIFT,
                        one.level(),
                        one.cost(),
                        one.concessions(),
                        depth - 1);
        }
        List<StrokePlan> plans = new ArrayList<>();
        for (int place = 1; place < tables.places; place++) {
            Cancellation.check(query.cancelled());
            for (int before = 0; before < place; before++) {
                int stroke = tables.first[before] + place - before - 1;
                if (stroke < tables.first[before + 1]) leave(stroke, place, plans);
            }
        }
        plans.sort((a, b) -> a.concessions() != b.concessions()
                ? Long.compare(a.concessions(), b.concessions())
                : Long.compare(a.cost(), b.cost()));
        return plans;
    }

    /** All labels that end with {@code stroke} are final; follows them, or makes plans of them. */
    private void leave(int stroke, int place, List<StrokePlan> plans) {
        for (int slot = 2 * stroke * depth * cells; slot < 2 * (stroke + 1) * depth * cells; slot++) {
            if (cost[slot] >= StrokeBound.UNREACHABLE) continue;
            if (place < tables.lastPlace()) expand(slot, place);
            else if (slot / cells % depth == 0) plans.add(plan(slot));
        }
    }

    private void expand(int slot, int place) {
        int direction = slot / cells / depth & 1;
        turn(slot, place, 1 - direction, StrokePlan.NO_SHIFT, level[slot], 0, ConcessionScale.NONE);
        for (int index = 0; index < tables.shifts[place].length; index++) {
            Shift one = tables.shifts[place][index];
            if (!one.reaches(level[slot]) || !open(one.concessions())) continue;
            follow(
                    slot,
                    place,
                    direction,
                    index,
                    one.level(),
                    cost[slot] + one.cost(),
                    sum(gives(slot), one.concessions()),
                    missing(slot));
            turn(slot, place, 1 - direction, index, one.level(), one.cost(), one.concessions());
        }
    }

    private void turn(int slot, int place, int direction, int choice, int from, long extra, long extraGives) {
        long turn = tables.turnCost[2 * place + direction];
        long turnGives = tables.turnGives[2 * place + direction];
        if (turn < 0 || !open(turnGives)) return;
        follow(
                slot,
                place,
                direction,
                choice,
                from,
                cost[slot] + extra + turn,
                sum(gives(slot), sum(extraGives, turnGives)),
                missing(slot));
    }

    private void follow(
            int slot, int place, int direction, int choice, int from, long spent, long given, int missingBefore) {
        for (int stroke = tables.first[place]; stroke < tables.first[place + 1]; stroke++) {
            int to = direction == 0 ? from + tables.amount[stroke] : from - tables.amount[stroke];
            if (to < 0 || to > tables.capacity) break;
            int move = 2 * stroke + direction;
            int end = (2 * tables.to[stroke] + direction) * tables.cells + tables.cellOf[to];
            if (tables.strokeCost[move] < 0 || tables.endCost[end] < 0) continue;
            if (!open(tables.strokeGives[move]) || !open(tables.endGives[end])) continue;
            int brings = differences == null ? 0 : differences[move];
            int missing = Math.max(0, missingBefore - brings);
            long ahead = bound.cost(move, missing, to);
            if (ahead >= StrokeBound.UNREACHABLE) continue;
            long pair = slot < 0 ? 0 : tables.pair(slot / cells / depth >> 1, stroke);
            long total = spent + pair + tables.strokeCost[move] + tables.endCost[end];
            long totalGiven = sum(given, sum(tables.strokeGives[move], tables.endGives[end]));
            if (total > query.costLimit() || !giving && total + ahead > query.costLimit()) continue;
            if (sum(totalGiven, bound.gives(move, missing, to)) > query.concessionLimit()) continue;
            int cell = (int) ((long) to * cells / (tables.capacity + 1));
            keep((move * depth + missing) * cells + cell, total, totalGiven, to, slot, choice);
        }
    }

    private void keep(int slot, long total, long given, int to, int before, int choice) {
        boolean better = cost[slot] >= StrokeBound.UNREACHABLE
                || given < gives(slot)
                || given == gives(slot) && total < cost[slot];
        if (!better) return;
        cost[slot] = total;
        if (giving) gives[slot] = given;
        level[slot] = to;
        parent[slot] = before;
        shift[slot] = choice;
    }

    private boolean open(long concessions) {
        return giving || concessions == ConcessionScale.NONE;
    }

    private long sum(long a, long b) {
        return giving ? tables.scale.add(a, b) : ConcessionScale.NONE;
    }

    private long gives(int slot) {
        return giving ? gives[slot] : ConcessionScale.NONE;
    }

    private int missing(int slot) {
        return slot / cells % depth;
    }

    private StrokePlan plan(int last) {
        List<Stroke> strokes = new ArrayList<>();
        int slot = last;
        for (; slot >= 0; slot = parent[slot]) {
            int move = slot / cells / depth;
            int stroke = move >> 1;
            Direction direction = Direction.values()[move & 1];
            int change = direction == Direction.RISING ? tables.amount[stroke] : -tables.amount[stroke];
            strokes.add(new Stroke(
                    tables.from[stroke], tables.to[stroke], direction, shift[slot], level[slot] - change, level[slot]));
        }
        Collections.reverse(strokes);
        return new StrokePlan(-1 - slot, strokes, cost[last], gives(last));
    }
}
