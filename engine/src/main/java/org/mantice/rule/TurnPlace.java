package org.mantice.rule;

/**
 * A place where the bellows may turn, just before what is written there. Only small closed facts, so that equal places
 * share one price.
 *
 * @param mark the strongest sign written here that something ends or begins
 * @param strength how strong the place is in its measure
 * @param pickup whether a pickup begins here, or the barline after one stands here
 * @param measureOfSection at a barline, or where the pickup to one begins: how many full measures of the section come
 *     before it, 0 or more; -1 elsewhere
 * @param slurred a slur joins the note before to the note after
 * @param endsSlur a slur ends on the note before
 * @param detached the note before is staccato or staccatissimo
 * @param repeatedNote the same keys are struck again
 * @param heldNote a melody note sounds on across the place
 * @param heldChord a button of the left hand stays down across the place
 * @param jump of the left hand into this place
 * @param restMillis written rest of the right hand around the place, 0 if there is none
 * @param gapMillis silence of the right hand there, by rest or by touch
 * @param beforeMillis from the onset of the note before to its end; of a held note, what has passed of it
 * @param afterMillis from here to the next onset of the melody or its end
 * @param beatMillis length of the felt beat here
 * @param turnMillis what a turn takes on this instrument
 */
public record TurnPlace(
        Mark mark,
        Strength strength,
        Pickup pickup,
        int measureOfSection,
        boolean slurred,
        boolean endsSlur,
        boolean detached,
        boolean repeatedNote,
        boolean heldNote,
        boolean heldChord,
        Jump jump,
        int restMillis,
        int gapMillis,
        int beforeMillis,
        int afterMillis,
        int beatMillis,
        int turnMillis)
        implements BellowsStep {
    /** What is written, weakest first. */
    public enum Mark {
        NONE,
        /** A comma in the words after the note before. */
        COMMA,
        /** A full stop or the like in the words after the note before. */
        STOP,
        /** A breath mark, caesura or fermata on the note before. */
        BREATH,
        /** A phrase mark. */
        PHRASE,
        /** A double bar, a repeat sign, or the order of play jumps. */
        SECTION,
        /** The next time through begins. */
        PASS
    }

    /** Weakest first. */
    public enum Strength {
        OFF_BEAT,
        BEAT,
        /** The middle of a measure of four beats or of two halves. */
        STRONG_BEAT,
        BARLINE
    }

    /** Where a pickup begins and ends. */
    public enum Pickup {
        NONE,
        /** The pickup begins here: here one breathes. */
        BEFORE,
        /** The barline between the pickup and its first full measure. */
        AFTER
    }

    /** How far the left hand must move just here. */
    public enum Jump {
        NONE,
        SMALL,
        LARGE
    }

    /** Whether the turn fits into the silence before. */
    public boolean turnsInRest() {
        return restMillis > 0 && restMillis >= turnMillis;
    }
}
