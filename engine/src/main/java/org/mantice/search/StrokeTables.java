package org.mantice.search;

import java.util.Arrays;
import java.util.List;
import org.mantice.search.StrokeLattice.Direction;
import org.mantice.search.StrokeLattice.Shift;
import org.mantice.search.StrokeLattice.Start;

/**
 * A {@link StrokeLattice} in plain arrays, checked. Strokes are numbered by start place, then end place; a stroke with
 * its direction is a move, {@code 2 * stroke + direction}.
 */
final class StrokeTables {
    private static final Direction[] DIRECTIONS = Direction.values();

    final int places;
    final int capacity;
    final int cells;
    /** Cell of every level. */
    final int[] cellOf;
    /** Lowest level of every cell, and one last entry: capacity + 1. */
    final int[] firstLevel;
    /** First stroke from every place, and one last entry: the number of strokes. */
    final int[] first;

    final int[] from;
    final int[] to;
    final int[] amount;
    /** By move; {@link StrokeLattice#IMPOSSIBLE} where there is none. */
    final long[] strokeCost;

    final long[] strokeGives;
    /** By {@code 2 * place + direction afterwards}. */
    final long[] turnCost;

    final long[] turnGives;
    /** By {@code (2 * place + direction) * cells + cell}. */
    final long[] endCost;

    final long[] endGives;
    /** Costs of a stroke followed by every stroke from its end, by {@code pairStart[stroke] + to - middle - 1}. */
    final long[] pairCost;

    final int[] pairStart;
    final Shift[][] shifts;
    final Start[] starts;
    final ConcessionScale scale;
    /** Whether anything gives way anywhere. */
    final boolean conceding;

    StrokeTables(StrokeLattice lattice) {
        places = atLeast("places", lattice.places(), 2);
        capacity = atLeast("capacity", lattice.capacity(), 1);
        cells = atLeast("cells", lattice.cells(), 1);
        scale = lattice.scale();
        firstLevel = cellBorders(lattice);
        cellOf = cellOfLevels();
        first = firstStrokes(lattice);
        int strokes = first[places - 1];
        from = new int[strokes];
        to = new int[strokes];
        amount = new int[strokes];
        strokeCost = new long[2 * strokes];
        strokeGives = new long[2 * strokes];
        fillStrokes(lattice);
        turnCost = new long[2 * places];
        turnGives = new long[2 * places];
        endCost = new long[2 * places * cells];
        endGives = new long[2 * places * cells];
        fillPlaces(lattice);
        pairStart = new int[strokes];
        pairCost = pairCosts(lattice);
        shifts = shifts(lattice);
        starts = starts(lattice);
        conceding = concedes();
        checkTotal();
    }

    int lastPlace() {
        return places - 1;
    }

    int strokes() {
        return from.length;
    }

    long pair(int stroke, int next) {
        return pairCost[pairStart[stroke] + next - first[to[stroke]]];
    }

    private int[] cellBorders(StrokeLattice lattice) {
        int[] borders = new int[cells + 1];
        borders[cells] = capacity + 1;
        for (int cell = 0; cell < cells; cell++) {
            borders[cell] = lattice.firstLevel(cell);
            int least = cell == 0 ? 0 : borders[cell - 1] + 1;
            int most = cell == 0 ? 0 : capacity;
            if (borders[cell] < least || borders[cell] > most)
                throw new IllegalArgumentException(
                        "first level of cell " + cell + " is " + borders[cell] + "; allowed: " + least + " to " + most);
        }
        return borders;
    }

    private int[] cellOfLevels() {
        int[] cellOf = new int[capacity + 1];
        for (int cell = 0; cell < cells; cell++) Arrays.fill(cellOf, firstLevel[cell], firstLevel[cell + 1], cell);
        return cellOf;
    }

    /** Strokes go on as long as their amount fits the capacity. */
    private int[] firstStrokes(StrokeLattice lattice) {
        int[] index = new int[places + 1];
        for (int place = 0; place + 1 < places; place++) {
            int furthest = lattice.furthest(place);
            if (furthest <= place || furthest >= places)
                throw new IllegalArgumentException("furthest place from " + place + " is " + furthest + "; allowed: "
                        + (place + 1) + " to " + (places - 1));
            int end = place + 1;
            for (int least = 0; end <= furthest; end++) {
                int one = lattice.amount(place, end);
                if (one < least)
                    throw new IllegalArgumentException(
                            "amount from " + place + " to " + end + " is " + one + "; allowed: " + least + " or more");
                if (one > capacity) break;
                least = one;
            }
            index[place + 1] = Math.addExact(index[place], end - place - 1);
        }
        index[places] = index[places - 1];
        return index;
    }

    private void fillStrokes(StrokeLattice lattice) {
        for (int place = 0; place + 1 < places; place++)
            for (int stroke = first[place]; stroke < first[place + 1]; stroke++) {
                from[stroke] = place;
                to[stroke] = place + 1 + stroke - first[place];
                amount[stroke] = lattice.amount(place, to[stroke]);
                for (Direction direction : DIRECTIONS) {
                    int move = 2 * stroke + direction.ordinal();
                    strokeCost[move] = possibleCost("stroke", lattice.strokeCost(place, to[stroke], direction));
                    strokeGives[move] = scale.check(lattice.strokeConcessions(place, to[stroke], direction));
                }
            }
    }

    private void fillPlaces(StrokeLattice lattice) {
        for (int place = 1; place < places; place++)
            for (Direction direction : DIRECTIONS) {
                int at = 2 * place + direction.ordinal();
                if (place < places - 1) {
                    turnCost[at] = possibleCost("turn", lattice.turnCost(place, direction));
                    turnGives[at] = scale.check(lattice.turnConcessions(place, direction));
                }
                for (int cell = 0; cell < cells; cell++) {
                    endCost[at * cells + cell] = possibleCost("end", lattice.endCost(place, direction, cell));
                    endGives[at * cells + cell] = scale.check(lattice.endConcessions(place, direction, cell));
                }
            }
    }

    private long[] pairCosts(StrokeLattice lattice) {
        int size = 0;
        for (int stroke = 0; stroke < strokes(); stroke++) {
            pairStart[stroke] = size;
            size = Math.addExact(size, first[to[stroke] + 1] - first[to[stroke]]);
        }
        long[] costs = new long[size];
        for (int stroke = 0; stroke < strokes(); stroke++)
            for (int next = first[to[stroke]]; next < first[to[stroke] + 1]; next++) {
                // A pair with a stroke that is never made is never looked at; most are such where little is left.
                if (isImpossible(stroke) || isImpossible(next)) continue;
                long cost = lattice.pairCost(from[stroke], to[stroke], to[next]);
                if (cost < 0)
                    throw new IllegalArgumentException("cost of the pair " + from[stroke] + ", " + to[stroke] + ", "
                            + to[next] + " is " + cost + "; allowed: 0 or more");
                costs[pairStart[stroke] + next - first[to[stroke]]] = cost;
            }
        return costs;
    }

    /** In both directions. */
    private boolean isImpossible(int stroke) {
        return strokeCost[2 * stroke] < 0 && strokeCost[2 * stroke + 1] < 0;
    }

    private Shift[][] shifts(StrokeLattice lattice) {
        Shift[][] all = new Shift[places][];
        for (int place = 0; place < places; place++) {
            List<Shift> here = place == 0 || place == lastPlace() ? List.of() : lattice.shifts(place);
            for (Shift shift : here) {
                checkLevel(shift.level());
                scale.check(shift.concessions());
            }
            if (here.stream().map(Shift::level).distinct().count() < here.size())
                throw new IllegalArgumentException("shifts at " + place + " are " + here + "; allowed: one per level");
            all[place] = here.toArray(Shift[]::new);
        }
        return all;
    }

    private Start[] starts(StrokeLattice lattice) {
        List<Start> all = lattice.starts();
        atLeast("number of starts", all.size(), 1);
        for (Start start : all) {
            checkLevel(start.level());
            scale.check(start.concessions());
        }
        if (all.stream()
                        .map(start -> List.of(start.level(), start.direction()))
                        .distinct()
                        .count()
                < all.size())
            throw new IllegalArgumentException("starts are " + all + "; allowed: one per level and direction");
        return all.toArray(Start[]::new);
    }

    private void checkLevel(int level) {
        if (level > capacity) throw new IllegalArgumentException("level is " + level + "; allowed: 0 to " + capacity);
    }

    private boolean concedes() {
        boolean any = any(strokeGives) || any(turnGives) || any(endGives);
        for (Start start : starts) any |= start.concessions() != 0;
        for (Shift[] here : shifts) for (Shift shift : here) any |= shift.concessions() != 0;
        return any;
    }

    /** A stroke per place, each with the dearest of everything, must not overflow. */
    private void checkTotal() {
        long largest = 0;
        try {
            long dearestShift = 0;
            for (Shift[] here : shifts) for (Shift shift : here) dearestShift = Math.max(dearestShift, shift.cost());
            for (long[] costs : List.of(strokeCost, turnCost, endCost, pairCost, new long[] {dearestShift}))
                largest = Math.addExact(largest, largest(costs));
            largest = Math.multiplyExact(largest, places);
            long dearestStart = 0;
            for (Start start : starts) dearestStart = Math.max(dearestStart, start.cost());
            largest = Math.addExact(largest, dearestStart);
        } catch (ArithmeticException overflow) {
            largest = Long.MAX_VALUE;
        }
        if (largest > LayeredGraph.LARGEST_TOTAL)
            throw new IllegalArgumentException("the largest costs, once for every place, sum to " + largest
                    + "; allowed: 0 to " + LayeredGraph.LARGEST_TOTAL);
    }

    private static long largest(long[] costs) {
        long largest = 0;
        for (long cost : costs) largest = Math.max(largest, cost);
        return largest;
    }

    private static boolean any(long[] values) {
        for (long value : values) if (value != 0) return true;
        return false;
    }

    private static long possibleCost(String name, long cost) {
        if (cost < StrokeLattice.IMPOSSIBLE)
            throw new IllegalArgumentException(name + " cost is " + cost + "; allowed: 0 or more, or "
                    + StrokeLattice.IMPOSSIBLE + " (impossible)");
        return cost;
    }

    private static int atLeast(String name, int value, int least) {
        if (value < least)
            throw new IllegalArgumentException(name + " is " + value + "; allowed: " + least + " or more");
        return value;
    }
}
