package org.mantice.app.look;

import org.mantice.app.sheet.SheetColours;

/** Switches between light and dark, and reads the colours of the look in force. */
public final class Looks {
    private Looks() {}

    /** Puts a look in force before any window is made, or for the windows there are. */
    public static void use(boolean dark) {}

    public static boolean isDark() {
        return false;
    }

    /** The sheet's colours in the look in force. */
    public static SheetColours sheetColours() {
        throw new UnsupportedOperationException("window helper");
    }
}
