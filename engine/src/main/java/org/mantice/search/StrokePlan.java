package org.mantice.search;

import java.util.List;

/**
 * An answer to a {@link StrokeLattice}.
 *
 * @param start index of its start in {@link StrokeLattice#starts()}
 * @param strokes from place 0 to the last place
 * @param cost total cost
 * @param concessions total concessions, packed by the lattice's scale
 */
public record StrokePlan(int start, List<Stroke> strokes, long cost, long concessions) {
    /** No shift before a stroke. */
    public static final int NO_SHIFT = -1;

    public StrokePlan {
        strokes = List.copyOf(strokes);
    }

    /**
     * One stroke.
     *
     * @param from place where it starts
     * @param to place where it ends
     * @param shift index of the shift before it in {@link StrokeLattice#shifts}, or {@link #NO_SHIFT}
     * @param startLevel level where it starts, after the shift
     * @param endLevel level where it ends
     */
    public record Stroke(
            int from, int to, StrokeLattice.Direction direction, int shift, int startLevel, int endLevel) {}
}
