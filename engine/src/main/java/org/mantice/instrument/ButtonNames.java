package org.mantice.instrument;

import org.mantice.tune.NoteName;

/** Bass buttons as the trade names them: {@code "C bass"}, {@code "E counterbass"}, {@code "G major"}. */
public final class ButtonNames {
    private ButtonNames() {}

    /** A counterbass is named by the note that it sounds. */
    public static String of(BassButton button) {
        int fifths = button.row() == BassRow.COUNTERBASS ? button.column() + 4 : button.column();
        return NoteName.ofFifths(fifths) + switch (button.row()) {
            case COUNTERBASS -> " counterbass";
            case BASS -> " bass";
            case MAJOR -> " major";
            case MINOR -> " minor";
            case SEVENTH -> " seventh";
            case DIMINISHED -> " diminished";
        };
    }
}
