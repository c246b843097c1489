package org.mantice.app.look;

import com.formdev.flatlaf.FlatDarkLaf;

/** Dark: the same hues for the evening. Colours and sizes stand in the file beside it. */
public final class DarkLook extends FlatDarkLaf {
    @Override
    public String getName() {
        return "Mantice dark";
    }
}
