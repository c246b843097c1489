package org.mantice.rule;

/** How the right hand comes to its place. */
public enum HandMove {
    /** The hand keeps its place, and every finger finds its key from there. */
    STAY,
    /** The thumb passes under a finger, going up. */
    THUMB_UNDER,
    /** A finger passes over the thumb, going down. */
    FINGER_OVER,
    /** The hand opens or closes about a finger that stays on its key until the next one sounds. */
    STRETCH,
    /** A silence leaves time to move. */
    SHIFT_AT_GAP,
    /** Another finger takes the same key. */
    REPEATED_NOTE,
    /** The same finger slides to a neighbour key. */
    GLIDE,
    /** The hand lifts in the middle of legato. */
    LIFT
}
