package org.mantice.layer.lefthand;

import java.util.Optional;

/**
 * A beat with its states.
 *
 * @param fromBefore the moves into it; empty for the first
 * @param named whether its buttons count as a named decision: every bass, and the first chord of each span
 * @param where in words
 */
record Stage(
        Beat beat,
        StateSpace space,
        int[][] costs,
        Optional<RuleTables.PairTable> fromBefore,
        boolean named,
        String where) {}
