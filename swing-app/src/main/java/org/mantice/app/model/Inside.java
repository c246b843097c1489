package org.mantice.app.model;

import java.util.Optional;
import java.util.Set;

/**
 * What belongs to a state and is not shown.
 *
 * @param leftOut ids of the rules that the player goes on without, or that a saved plan was made without
 * @param made what the offers in view were planned with
 * @param version another one for every decision
 */
record Inside(Set<String> leftOut, Picks picks, Optional<Made> made, long version) {
    static final Inside NEW = new Inside(Set.of(), Picks.NONE, Optional.empty(), 0);

    Inside {
        leftOut = Set.copyOf(leftOut);
    }
}
