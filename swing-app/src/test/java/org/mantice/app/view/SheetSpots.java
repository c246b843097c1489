package org.mantice.app.view;

import java.awt.Rectangle;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.sheet.SheetPainter.Target;
import org.mantice.app.sheet.Strip;
import org.mantice.tune.WrittenPlace;

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

    /** The n-th place of the chord line, from 0. */
    public static Rectangle ofChord(SheetView sheet, int number) {
        return sheet.sheet().orElseThrow().chords().get(number).bounds().getBounds();
    }

    /** The n-th place of the chord line, from 0. */
    public static WrittenPlace chordPlace(SheetView sheet, int number) {
        return sheet.sheet().orElseThrow().chords().get(number).spot().place();
    }

    /** The place of the chord line that is pointed at; -1 if none is. */
    public static int chordSelected(SheetView sheet) {
        return sheet.sheet().orElseThrow().chords().stream()
                .map(ChordTarget::spot)
                .toList()
                .indexOf(sheet.pointing().chord().orElse(null));
    }

    /** Whether a chord is being typed. */
    public static boolean isTyping(SheetView sheet) {
        return sheet.typing().field().isOpen();
    }
}
