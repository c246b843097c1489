package org.mantice.search;

import java.util.List;

/**
 * A problem for {@link StrokeSearch}: cut places 0 to n-1 into strokes, each from one place to a later one, while every
 * stroke raises or lowers a level by a whole amount and the level stays within 0 to {@link #capacity()}. Neighbouring
 * strokes change direction, unless a {@link Shift} moves the level between them.
 *
 * <p>The cost of a plan is the sum, over its strokes, of {@link #strokeCost}, {@link #endCost} in the cell of the level
 * where the stroke ends, and for every stroke but the first {@link #turnCost} (where the direction changes),
 * {@link #pairCost} and the cost of the shift before it; and the cost of its {@link Start}. Concessions are summed in
 * the same way by {@link #scale()}.
 *
 * <p>Every method is called while the search is set up, as a rule once for each argument, and must give the same answer
 * each time. Costs are 0 or more, or {@link #IMPOSSIBLE} where the method says so. Time and memory of a search grow
 * with the square of the number of strokes from a place, so {@link #furthest} should be as near as the matter allows.
 */
public interface StrokeLattice {
    /** The cost of what cannot be done at all. */
    long IMPOSSIBLE = -1;

    /** Which way a stroke moves the level. */
    enum Direction {
        RISING,
        FALLING;

        public Direction opposite() {
            return this == RISING ? FALLING : RISING;
        }
    }

    /**
     * A way to begin at place 0.
     *
     * @param level 0 to {@link #capacity()}
     * @param direction of the first stroke
     * @param cost 0 or more
     * @param concessions packed by {@link #scale()}
     */
    record Start(int level, Direction direction, long cost, long concessions) {
        public Start {
            if (level < 0) throw new IllegalArgumentException("level is " + level + "; allowed: 0 or more");
            if (cost < 0) throw new IllegalArgumentException("cost is " + cost + "; allowed: 0 or more");
            if (concessions < 0)
                throw new IllegalArgumentException("concessions are " + concessions + "; allowed: 0 or more");
        }

        public Start(int level, Direction direction) {
            this(level, direction, 0, ConcessionScale.NONE);
        }
    }

    /**
     * A move of the level at a place, between the stroke that ends and the one that starts there; either direction may
     * follow. Possible from every other level at most {@code most} away.
     *
     * @param level where the level is afterwards
     * @param most the largest move, 1 or more
     * @param cost 0 or more
     * @param concessions packed by {@link #scale()}
     */
    record Shift(int level, int most, long cost, long concessions) {
        public Shift {
            if (level < 0) throw new IllegalArgumentException("level is " + level + "; allowed: 0 or more");
            if (most < 1) throw new IllegalArgumentException("most is " + most + "; allowed: 1 or more");
            if (cost < 0) throw new IllegalArgumentException("cost is " + cost + "; allowed: 0 or more");
            if (concessions < 0)
                throw new IllegalArgumentException("concessions are " + concessions + "; allowed: 0 or more");
        }

        boolean reaches(int from) {
            return from != level && Math.abs(from - level) <= most;
        }
    }

    /** Number of places, 2 or more; the first stroke starts at place 0 and the last ends at the last place. */
    int places();

    /** The highest level, 1 or more; the lowest is 0. */
    int capacity();

    /** What a stroke adds to the level or takes from it; 0 or more, and not less for a later {@code to}. */
    int amount(int from, int to);

    /** The last place where a stroke from {@code from} may end: after {@code from}, at most the last place. */
    default int furthest(int from) {
        return places() - 1;
    }

    /** Number of level cells, the only view of the level that costs have; 1 or more. */
    int cells();

    /** The lowest level of a cell; 0 for cell 0, then ascending, at most {@link #capacity()}. */
    int firstLevel(int cell);

    /** The ways to begin, 1 or more, without duplicates of level and direction. */
    List<Start> starts();

    /** The shifts possible at a place (1 to n-2), none twice. */
    default List<Shift> shifts(int place) {
        return List.of();
    }

    /** Cost of a stroke, or {@link #IMPOSSIBLE}: how locks and directions that are ruled out are told. */
    long strokeCost(int from, int to, Direction direction);

    /** Cost of a change of direction at a place (1 to n-2) towards {@code next}, or {@link #IMPOSSIBLE}. */
    long turnCost(int place, Direction next);

    /** Cost of two neighbouring strokes, from {@code first} to {@code middle} and on to {@code last}. */
    long pairCost(int first, int middle, int last);

    /** Cost of a stroke's end at a place with the level in {@code cell}, or {@link #IMPOSSIBLE}. */
    long endCost(int place, Direction direction, int cell);

    /** How concessions are packed. */
    default ConcessionScale scale() {
        return new ConcessionScale(1);
    }

    /** What gives way if this stroke is taken. */
    default long strokeConcessions(int from, int to, Direction direction) {
        return ConcessionScale.NONE;
    }

    /** What gives way if the direction changes here. */
    default long turnConcessions(int place, Direction next) {
        return ConcessionScale.NONE;
    }

    /** What gives way if a stroke ends here with the level in {@code cell}. */
    default long endConcessions(int place, Direction direction, int cell) {
        return ConcessionScale.NONE;
    }
}
