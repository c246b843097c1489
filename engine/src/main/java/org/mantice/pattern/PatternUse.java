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
        /** Nobody: a bass staff is written and played as it stands; the pattern is what the meter would ask for. */
        WRITTEN,
        /** Assumed from the tune's dance. */
        DANCE,
        /** Assumed from meter and tempo. */
        METER
    }

    /** Whether it is neither chosen nor written. */
    public boolean isAssumed() {
        return why == Why.DANCE || why == Why.METER;
    }
}
