package org.mantice.layer.lefthand;

import java.util.Optional;

/**
 * A beat with its states.
 *
 * @param fromBefore the moves into it; empty for the first
 * @param named whether its buttons count as a named decision: every bass, and the first chord of each span
 * @param where in words
 */
record Stage(Beat beat, StateSpace space, int[][] costs, Optional<Moves> fromBefore, boolean named, String where) {
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
