package org.mantice.app.work;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.mantice.app.sheet.Strip;

/**
 * How the window looked last.
 *
 * @param language that was chosen; empty to follow the system
 * @param dark whether dark was chosen; empty if nothing was
 * @param zoomPercent of the sheet, 25 to 800
 * @param window where it stood
 * @param strips that were shown
 */
public record Appearance(
        Optional<Locale> language,
        Optional<Boolean> dark,
        int zoomPercent,
        Optional<WindowBounds> window,
        Set<Strip> strips) {
    public static final Appearance USUAL =
            new Appearance(Optional.empty(), Optional.empty(), 100, Optional.empty(), EnumSet.allOf(Strip.class));
    static final int LEAST_ZOOM = 25;
    static final int MOST_ZOOM = 800;

    public Appearance {
        if (zoomPercent < LEAST_ZOOM || zoomPercent > MOST_ZOOM)
            throw new IllegalArgumentException(
                    "zoomPercent is " + zoomPercent + "; allowed: " + LEAST_ZOOM + " to " + MOST_ZOOM);
        EnumSet<Strip> shown = EnumSet.noneOf(Strip.class);
        shown.addAll(strips);
        strips = Collections.unmodifiableSet(shown);
    }

    public Appearance withLanguage(Locale chosen) {
        return new Appearance(Optional.of(chosen), dark, zoomPercent, window, strips);
    }

    public Appearance withDark(boolean chosen) {
        return new Appearance(language, Optional.of(chosen), zoomPercent, window, strips);
    }

    public Appearance withZoom(int percent) {
        return new Appearance(language, dark, percent, window, strips);
    }

    public Appearance withWindow(WindowBounds bounds) {
        return new Appearance(language, dark, zoomPercent, Optional.of(bounds), strips);
    }

    public Appearance withStrips(Set<Strip> shown) {
        return new Appearance(language, dark, zoomPercent, window, shown);
    }
}
