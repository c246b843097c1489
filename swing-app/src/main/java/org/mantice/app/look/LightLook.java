package org.mantice.app.look;

import com.formdev.flatlaf.FlatLightLaf;

/** Light: warm white paper and petrol. Colours and sizes stand in the file beside it. */
public final class LightLook extends FlatLightLaf {
    @Override
    public String getName() {
        return "Mantice light";
    }
}
