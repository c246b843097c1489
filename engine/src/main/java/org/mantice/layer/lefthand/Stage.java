package org.mantice.layer.lefthand;

import java.util.Optional;

/** A beat with its states. */
final class Stage {
    private final Beat beat;
    private final StateSpace space;
    private final int[][] costs;
    private final Optional<Moves> fromBefore;
    private final boolean named;
    private final String where;

    Stage(Beat beat, StateSpace space, int[][] costs, Optional<Moves> fromBefore, boolean named, String where) {
        this.beat = beat;
        this.space = space;
        this.costs = costs;
        this.fromBefore = fromBefore;
        this.named = named;
        this.where = where;
    }

    Beat beat() {
        return beat;
    }

    StateSpace space() {
        return space;
    }

    /** By rule, then by way. */
    int[][] costs() {
        return costs;
    }

    /** The moves into it; empty for the first. */
    Optional<Moves> fromBefore() {
        return fromBefore;
    }

    /** Whether its buttons count as a named decision: every bass, and the first chord of each span. */
    boolean named() {
        return named;
    }

    /** In words. */
    String where() {
        return where;
    }

    /**
     * The moves between two beats.
     *
     * @param sameSpan whether both belong to one chord, which then keeps its buttons
     */
    record Moves(int id, StateSpace from, StateSpace to, boolean sameSpan, RuleTables.PairTable table) {
        boolean allowed(int source, int target) {
            return !sameSpan || to.mayFollow(from, source, target);
        }

        /** Index of a move in the table. */
        int index(int source, int target) {
            return from.ways().get(source) * to.moments().size() + to.ways().get(target);
        }
    }
}
