package org.mantice.layer.righthand;

/**
 * All that the lattice knows of the way from one moment to the next.
 *
 * @param availableMillis from onset to onset, in steps of ten
 * @param gapMillis silence before the second, in steps of ten
 */
record Junction(Moment from, Moment to, long availableMillis, long gapMillis, boolean slurred) {}
