package org.mantice.rule;

/** The bans that give way when nothing else is left, mildest first. They are counted beside the cost, never in it. */
public enum GiveWay {
    COMFORTABLE_OPENING,
    TURN_IN_SLUR,
    AIR_BUTTON_IN_SHORT_REST,
    TURN_UNDER_SUSTAINED_CHORD,
    /** Only where the player allows it. */
    TURN_IN_HELD_NOTE,
    /** A stretch beyond the practical span: the hand lifts, legato is lost. */
    LEGATO
}
