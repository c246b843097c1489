package org.mantice.app.sheet;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How the letters of the strips look: face and size. Widths are the same on every machine, for the fonts are our own.
 *
 * @param size of the em, in staff spaces
 */
record Lettering(Face face, double size) {
    /** The fonts that come with the app. */
    enum Face {
        PLAIN(SheetFonts.plain()),
        BOLD(SheetFonts.bold()),
        BOLD_ITALIC(SheetFonts.bold().deriveFont(Font.ITALIC)),
        MUSIC(SheetFonts.music());

        private final Font measured;
        private final Map<String, Double> widths = new ConcurrentHashMap<>();

        Face(Font font) {
            this.measured = font.deriveFont((float) MEASURED_AT);
        }

        private double width(String text) {
            if (widths.size() > MOST_WIDTHS) widths.clear();
            return widths.computeIfAbsent(
                    text, t -> measured.getStringBounds(t, EXACT).getWidth() / MEASURED_AT);
        }
    }

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    /** Fonts are measured large, so that widths do not depend on hinting. */
    private static final int MEASURED_AT = 100;
    /** Of DejaVu Sans: its capitals and figures are 0.73 em high. */
    private static final double CAPITALS = 0.73;

    private static final int MOST_WIDTHS = 4000;
    private static final Map<Lettering, Font> SIZED = new ConcurrentHashMap<>();

    Font font() {
        return SIZED.computeIfAbsent(this, lettering -> face.measured.deriveFont((float) size));
    }

    double width(String text) {
        return size * face.width(text);
    }

    /** Height of a capital letter or figure. */
    double capital() {
        return size * CAPITALS;
    }
}
