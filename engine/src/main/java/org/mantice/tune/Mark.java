package org.mantice.tune;

/** Something written above or below the staff, at its place in a measure. */
public sealed interface Mark {
    MusicalTime offset();

    /** A loudness from here on. */
    record Dynamic(MusicalTime offset, Loudness level) implements Mark {}

    /** The start of a hairpin. */
    record HairpinStart(MusicalTime offset, boolean crescendo) implements Mark {}

    /** The end of the hairpin open here. */
    record HairpinEnd(MusicalTime offset) implements Mark {}

    /** A tempo from here on. */
    record TempoChange(MusicalTime offset, Tempo tempo) implements Mark {}

    /** A rehearsal letter or number. */
    record Rehearsal(MusicalTime offset, String text) implements Mark {}

    /** Words that carry no meaning for the plan but are kept. */
    record Words(MusicalTime offset, String text) implements Mark {}

    /** A phrase begins here: an explicit mark, not a slur. */
    record PhraseStart(MusicalTime offset) implements Mark {}

    /**
     * A treble register as the dots of a registration sign.
     *
     * @param high the 4' bank sounds
     * @param middle how many 8' banks sound, 0 to 3
     * @param low the 16' bank sounds
     */
    record Registration(MusicalTime offset, boolean high, int middle, boolean low) implements Mark {
        public Registration {
            if (middle < 0 || middle > 3)
                throw new IllegalArgumentException("middle is " + middle + "; allowed: 0 to 3");
        }
    }
}
