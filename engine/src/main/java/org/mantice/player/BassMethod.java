package org.mantice.player;

/** Which fingers of the left hand play what. */
public enum BassMethod {
    /** Fourth finger bass, third major, second minor and seventh. */
    FOUR_THREE_TWO,
    /** Third finger bass, second chord. */
    THREE_TWO,
    /** Fourth finger bass, third and second chords, fifth also the counterbass. */
    FIVE_FINGER
}
