package org.mantice.instrument;

import java.util.Optional;

/** Why the buttons chosen for a chord are not the ones that the symbol asks for, in the order in which it is said. */
public enum Substitution {
    NO_BASS_SIDE("the instrument has no bass side"),
    NO_MAJOR_ROW("the instrument has no major row"),
    NO_MINOR_ROW("the instrument has no minor row"),
    NO_SEVENTH_ROW("the instrument has no seventh row"),
    NO_DIMINISHED_ROW("the instrument has no diminished row"),
    NO_COUNTERBASS_ROW("the instrument has no counterbass row, where the bass note would lie"),
    BROKEN_BUTTON("a button of the usual ones is broken"),
    ENHARMONIC_COLUMN("the written column lies beyond the last one; the same notes lie twelve columns away"),
    BEYOND_COLUMNS("the columns do not reach the usual buttons under any name"),
    OTHER_BASS("another bass note than the written one"),
    NO_BASS_NOTE("no bass note fits"),
    NOT_PLAYABLE("no buttons come near the chord, so it stays silent");

    private final String text;

    Substitution(String text) {
        this.text = text;
    }

    /** In plain English. */
    public String text() {
        return text;
    }

    /** The reason that a chord row is not there; none for the bass rows, whose notes lie elsewhere too. */
    static Optional<Substitution> ofMissing(BassRow row) {
        return switch (row) {
            case MAJOR -> Optional.of(NO_MAJOR_ROW);
            case MINOR -> Optional.of(NO_MINOR_ROW);
            case SEVENTH -> Optional.of(NO_SEVENTH_ROW);
            case DIMINISHED -> Optional.of(NO_DIMINISHED_ROW);
            case BASS, COUNTERBASS -> Optional.empty();
        };
    }
}
