package org.mantice.tune;

/** A written bellows effect: neither counts as a turn. SMuFL names ricochets of 2 to 6 strokes. */
public enum BellowsEffect {
    SHAKE,
    RICOCHET
}
