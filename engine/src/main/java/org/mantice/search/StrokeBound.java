package org.mantice.search;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.mantice.search.StrokeLattice.Shift;
import org.mantice.search.StrokeLattice.Start;

/**
 * What a plan still costs at least after a stroke: a backward pass over groups of levels, where a stroke from a group
 * may end in any group that one of its levels reaches (rounded outward, so never too much). With concessions the least
 * concessions first, then the least cost among these.
 *
 * <p>Time: groups × moves × moves that may follow one × (differences asked for + 1).
 */
final class StrokeBound {
    /** More than any cost; sums with it do not overflow. */
    static final long UNREACHABLE = Long.MAX_VALUE / 2;

    /** Largest number of entries of the table. Estimate: 32 MB. */
    private static final int LARGEST_TABLE = 4_000_000;

    /** Steps of the innermost loop that are worth a finer grouping. Estimate: 60 ms. */
    private static final long WORTHWHILE_STEPS = 60_000_000;

    /** Finer groups than these seldom save any label: the longer the plan, the more rounding adds up. Estimates. */
    private static final int MOST_GROUPS = 1_600;

    private static final int GROUPS_PER_THREE_PLACES = 4;

    private final StrokeTables tables;
    private final boolean giving;
    /** Differences by move; null where none are asked for. */
    private final int[] differences;
    /** Number of values of "differences still missing": 0 to depth - 1. */
    private final int depth;

    private final int groups;
    private final int[] groupFirst;
    private final int[] groupOf;
    /** By {@code row(move, missing) + group}. */
    private final long[] cost;
    /** Concessions beside {@link #cost}; null unless concessions are allowed. */
    private final long[] gives;

    private final long[] startCost;
    private final long[] startGives;

    /** Least cost of a stroke's end by {@code (2 * place + direction) * groups + group}. */
    private final long[] endCost;

    private final long[] endGives;
    /** Rows of the moves from the place at hand: what follows after choosing that move, by group it starts in. */
    private long[] aheadCost = new long[0];

    private long[] aheadGives = new long[0];
    private int[] aheadFrom = new int[0];
    private int[] aheadTo = new int[0];

    StrokeBound(StrokeTables tables, boolean giving, int[] differences, int depth, BooleanSupplier cancelled) {
        this.tables = tables;
        this.giving = giving;
        this.differences = differences;
        this.depth = depth;
        this.groupFirst = borders(groupsWanted());
        this.groups = groupFirst.length - 1;
        this.groupOf = new int[tables.capacity + 1];
        for (int group = 0; group < groups; group++)
            Arrays.fill(groupOf, groupFirst[group], groupFirst[group + 1], group);
        this.cost = new long[2 * tables.strokes() * depth * groups];
        this.gives = giving ? new long[cost.length] : null;
        this.endCost = new long[2 * tables.places * groups];
        this.endGives = new long[endCost.length];
        fillEnds();
        for (int place = tables.lastPlace(); place > 0; place--) {
            Cancellation.check(cancelled);
            fillPlace(place);
        }
        lookAhead(0);
        this.startCost = new long[tables.starts.length];
        this.startGives = new long[tables.starts.length];
        for (int start = 0; start < startCost.length; start++) fillStart(start);
    }

    int groups() {
        return groups;
    }

    /** Least cost after a move that ended at {@code level} with so many differences still missing. */
    long cost(int move, int missing, int level) {
        return cost[row(move, missing) + groupOf[level]];
    }

    long gives(int move, int missing, int level) {
        return giving ? gives[row(move, missing) + groupOf[level]] : ConcessionScale.NONE;
    }

    /** Least cost of a plan with this start, without the start's own. */
    long startCost(int start) {
        return startCost[start];
    }

    long startGives(int start) {
        return startGives[start];
    }

    /** Whether something with these concessions may be used. */
    private boolean open(long concessions) {
        return giving || concessions == ConcessionScale.NONE;
    }

    private int row(int move, int missing) {
        return (move * depth + missing) * groups;
    }

    /** As many as the cells, more where that costs little time, fewer where the table would be too large. */
    private int groupsWanted() {
        long rows = 2L * tables.strokes() * depth * (giving ? 2 : 1);
        long steps = 2L * tables.pairCost.length * depth * (giving ? 2 : 1);
        long useful = Math.min(MOST_GROUPS, GROUPS_PER_THREE_PLACES * (tables.places / 3L));
        long worthwhile = Math.min(useful, WORTHWHILE_STEPS / Math.max(1, steps));
        return (int) Math.max(1, Math.min(Math.max(tables.cells, worthwhile), LARGEST_TABLE / Math.max(1, rows)));
    }

    /** Lowest level of about {@code count} groups, each a whole number of cells or a part of one. */
    private int[] borders(int count) {
        int perGroup = (tables.cells + count - 1) / count;
        int parts = Math.max(1, count / tables.cells);
        int[] borders = new int[tables.cells * parts + 1];
        int size = 0;
        for (int cell = 0; cell < tables.cells; cell += perGroup) {
            int low = tables.firstLevel[cell];
            int levels = tables.firstLevel[Math.min(cell + perGroup, tables.cells)] - low;
            int into = Math.min(parts, levels);
            for (int part = 0; part < into; part++) borders[size++] = low + (int) ((long) levels * part / into);
        }
        borders[size++] = tables.capacity + 1;
        return Arrays.copyOf(borders, size);
    }

    private void fillEnds() {
        Arrays.fill(endCost, UNREACHABLE);
        for (int at = 2; at < 2 * tables.places; at++) for (int group = 0; group < groups; group++) fillEnd(at, group);
    }

    private void fillEnd(int at, int group) {
        int to = at * groups + group;
        int last = tables.cellOf[groupFirst[group + 1] - 1];
        for (int cell = tables.cellOf[groupFirst[group]]; cell <= last; cell++) {
            long one = tables.endCost[at * tables.cells + cell];
            long given = tables.endGives[at * tables.cells + cell];
            if (one < 0 || !open(given) || !better(given, one, endGives[to], endCost[to])) continue;
            endCost[to] = one;
            endGives[to] = given;
        }
    }

    /** Less conceded, or as little and cheaper; whatever is reachable is better than what is not. */
    private static boolean better(long gives, long cost, long thanGives, long thanCost) {
        if (thanCost >= UNREACHABLE) return cost < UNREACHABLE;
        if (cost >= UNREACHABLE) return false;
        return gives < thanGives || gives == thanGives && cost < thanCost;
    }

    /** Fills the rows of all moves that end at {@code place}. */
    private void fillPlace(int place) {
        if (place < tables.lastPlace()) lookAhead(place);
        for (int before = place - 1; before >= 0; before--) {
            int stroke = tables.first[before] + place - before - 1;
            if (stroke >= tables.first[before + 1]) continue;
            for (int direction = 0; direction < 2; direction++)
                for (int missing = 0; missing < depth; missing++) {
                    int row = row(2 * stroke + direction, missing);
                    if (tables.strokeCost[2 * stroke + direction] < 0) {
                        Arrays.fill(cost, row, row + groups, UNREACHABLE);
                        continue;
                    }
                    if (place == tables.lastPlace()) {
                        Arrays.fill(cost, row, row + groups, missing == 0 ? 0 : UNREACHABLE);
                        continue;
                    }
                    Arrays.fill(cost, row, row + groups, UNREACHABLE);
                    turn(row, stroke, place, 1 - direction, missing);
                    for (Shift shift : tables.shifts[place]) shift(row, stroke, place, direction, missing, shift);
                }
        }
    }

    private int ahead(int place, int next, int direction, int missing) {
        return (2 * (next - tables.first[place]) + direction) * depth + missing;
    }

    private void lookAhead(int place) {
        int moves = 2 * (tables.first[place + 1] - tables.first[place]) * depth;
        if (aheadFrom.length < moves) {
            aheadCost = new long[moves * groups];
            aheadGives = new long[giving ? moves * groups : 0];
            aheadFrom = new int[moves];
            aheadTo = new int[moves];
        }
        for (int next = tables.first[place]; next < tables.first[place + 1]; next++)
            for (int direction = 0; direction < 2; direction++)
                for (int missing = 0; missing < depth; missing++)
                    lookAhead(2 * next + direction, missing, ahead(place, next, direction, missing));
    }

    /** What choosing {@code move} costs from every group on. */
    private void lookAhead(int move, int missing, int slot) {
        int from = groups;
        int to = 0;
        long own = tables.strokeCost[move];
        long ownGives = tables.strokeGives[move];
        if (own >= 0 && open(ownGives)) {
            int brings = differences == null ? 0 : differences[move];
            int row = row(move, Math.max(0, missing - brings));
            int end = (2 * tables.to[move >> 1] + (move & 1)) * groups;
            int amount = (move & 1) == 0 ? tables.amount[move >> 1] : -tables.amount[move >> 1];
            for (int group = 0; group < groups; group++) {
                int at = slot * groups + group;
                bestEnd(at, groupFirst[group] + amount, groupFirst[group + 1] - 1 + amount, row, end);
                if (aheadCost[at] >= UNREACHABLE) continue;
                aheadCost[at] += own;
                if (giving) aheadGives[at] = tables.scale.add(aheadGives[at], ownGives);
                from = Math.min(from, group);
                to = group + 1;
            }
        }
        aheadFrom[slot] = from;
        aheadTo[slot] = Math.max(from, to);
    }

    /** The best end in the groups of the levels from {@code low} to {@code high}. */
    private void bestEnd(int at, int low, int high, int row, int end) {
        long best = UNREACHABLE;
        long least = ConcessionScale.NONE;
        if (high >= 0 && low <= tables.capacity) {
            int last = groupOf[Math.min(high, tables.capacity)];
            for (int group = groupOf[Math.max(low, 0)]; group <= last; group++) {
                long one = endCost[end + group] + cost[row + group];
                if (one >= UNREACHABLE) continue;
                if (giving) {
                    long given = tables.scale.add(endGives[end + group], gives[row + group]);
                    if (!better(given, one, least, best)) continue;
                    least = given;
                    best = one;
                } else if (one < best) best = one;
            }
        }
        aheadCost[at] = best;
        if (giving) aheadGives[at] = least;
    }

    /** Improves a row by the moves that may follow with a change of direction. */
    private void turn(int row, int stroke, int place, int direction, int missing) {
        long turn = tables.turnCost[2 * place + direction];
        long turnGives = tables.turnGives[2 * place + direction];
        if (turn < 0 || !open(turnGives)) return;
        for (int next = tables.first[place]; next < tables.first[place + 1]; next++) {
            int slot = ahead(place, next, direction, missing);
            if (aheadFrom[slot] == aheadTo[slot]) continue;
            long own = turn + tables.pair(stroke, next);
            if (giving) improveGiving(row, slot, own, turnGives);
            else improve(row, slot, own);
        }
    }

    private void improve(int row, int slot, long own) {
        long[] ahead = aheadCost;
        long[] here = cost;
        int base = slot * groups;
        for (int group = aheadFrom[slot], end = aheadTo[slot]; group < end; group++) {
            long before = here[row + group];
            long change = own + ahead[base + group] - before;
            // The smaller of the two without a branch, which the compiler can do for several groups at once.
            here[row + group] = before + (change & change >> 63);
        }
    }

    private void improveGiving(int row, int slot, long own, long ownGives) {
        int base = slot * groups;
        for (int group = aheadFrom[slot], end = aheadTo[slot]; group < end; group++) {
            if (aheadCost[base + group] >= UNREACHABLE) continue;
            long one = own + aheadCost[base + group];
            long given = tables.scale.add(ownGives, aheadGives[base + group]);
            if (!better(given, one, gives[row + group], cost[row + group])) continue;
            cost[row + group] = one;
            gives[row + group] = given;
        }
    }

    /** Improves a row by the moves that may follow after a shift. */
    private void shift(int row, int stroke, int place, int direction, int missing, Shift shift) {
        if (!open(shift.concessions())) return;
        for (int nextDirection = 0; nextDirection < 2; nextDirection++) {
            long own = shift.cost();
            long ownGives = shift.concessions();
            if (nextDirection != direction) {
                long turn = tables.turnCost[2 * place + nextDirection];
                long turnGives = tables.turnGives[2 * place + nextDirection];
                if (turn < 0 || !open(turnGives)) continue;
                own += turn;
                ownGives = tables.scale.add(ownGives, turnGives);
            }
            for (int next = tables.first[place]; next < tables.first[place + 1]; next++) {
                int at = ahead(place, next, nextDirection, missing) * groups + groupOf[shift.level()];
                if (!isAhead(at)) continue;
                long one = own + tables.pair(stroke, next) + aheadCost[at];
                long given = giving ? tables.scale.add(ownGives, aheadGives[at]) : ConcessionScale.NONE;
                improveWithin(row, shift, one, given);
            }
        }
    }

    private boolean isAhead(int at) {
        int slot = at / groups;
        int group = at % groups;
        return group >= aheadFrom[slot] && group < aheadTo[slot] && aheadCost[at] < UNREACHABLE;
    }

    private void improveWithin(int row, Shift shift, long one, long given) {
        int lowest = groupOf[Math.max(0, shift.level() - shift.most())];
        int highest = groupOf[Math.min(tables.capacity, shift.level() + shift.most())];
        for (int group = lowest; group <= highest; group++) {
            if (!better(given, one, giving ? gives[row + group] : 0, cost[row + group])) continue;
            cost[row + group] = one;
            if (giving) gives[row + group] = given;
        }
    }

    private void fillStart(int index) {
        Start start = tables.starts[index];
        startCost[index] = UNREACHABLE;
        if (!open(start.concessions())) return;
        for (int next = 0; next < tables.first[1]; next++) {
            int at = ahead(0, next, start.direction().ordinal(), depth - 1) * groups + groupOf[start.level()];
            if (!isAhead(at)) continue;
            long given = giving ? aheadGives[at] : ConcessionScale.NONE;
            if (!better(given, aheadCost[at], startGives[index], startCost[index])) continue;
            startCost[index] = aheadCost[at];
            startGives[index] = given;
        }
    }
}
