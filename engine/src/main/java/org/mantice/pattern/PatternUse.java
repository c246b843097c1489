package org.mantice.pattern;

import org.mantice.pattern.Accompaniment.Hand;

/**
 * What the left hand plays in a measure, and why.
 *
 * @param hand how much of the pattern
 */
public record PatternUse(BassPattern pattern, Hand hand, Why why) {
    /** Who chose the pattern. */
    public enum Why {
        /** The player. */
        CHOSEN,
        /** Assumed from the tune's dance. */
        DANCE,
        /** Assumed from meter and tempo. */
        METER
    }

    public boolean isAssumed() {
        return why != Why.CHOSEN;
    }
}
