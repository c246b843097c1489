package org.mantice.instrument;

/** Bass buttons as the trade names them: {@code "C bass"}, {@code "E counterbass"}, {@code "G major"}. */
public final class ButtonNames {
    private ButtonNames() {}

    /** A counterbass is named by the note that it sounds. */
    public static String of(BassButton button) {
        return button.noteName()
                + switch (button.row()) {
                    case COUNTERBASS -> " counterbass";
                    case BASS -> " bass";
                    case MAJOR -> " major";
                    case MINOR -> " minor";
                    case SEVENTH -> " seventh";
                    case DIMINISHED -> " diminished";
                };
    }
}
