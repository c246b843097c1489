package org.mantice.app.view;

import java.awt.Rectangle;
import org.mantice.app.sheet.SheetPainter.Target;
import org.mantice.app.sheet.Strip;

/** Where a sheet shows something, for robots. */
public final class SheetSpots {
    private SheetSpots() {}

    /** The n-th decision of a strip in a band, from 0. */
    public static Rectangle of(SheetView sheet, int band, Strip strip, int number) {
        Target target = sheet.sheet().orElseThrow().targets(band).stream()
                .filter(one -> one.spot().strip() == strip)
                .skip(number)
                .findFirst()
                .orElseThrow();
        return target.bounds().getBounds();
    }
}
