package org.mantice.app.sheet;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.EnumMap;
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
        PLAIN,
        BOLD,
        MUSIC;

        private Font measured() {
            Font font =
                    switch (this) {
                        case PLAIN -> SheetFonts.plain();
                        case BOLD -> SheetFonts.bold();
                        case MUSIC -> SheetFonts.music();
                    };
            return font.deriveFont((float) MEASURED_AT);
        }
    }

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    /** Fonts are measured large, so that widths do not depend on hinting. */
    private static final int MEASURED_AT = 100;
    /** Of DejaVu Sans: its capitals and figures are 0.73 em high. */
    private static final double CAPITALS = 0.73;

    private static final int MOST_WIDTHS = 4000;
    private static final Map<Face, Font> FONTS = new EnumMap<>(Face.class);
    private static final Map<Face, Map<String, Double>> WIDTHS = new EnumMap<>(Face.class);
    private static final Map<Lettering, Font> SIZED = new ConcurrentHashMap<>();

    static {
        for (Face face : Face.values()) {
            FONTS.put(face, face.measured());
            WIDTHS.put(face, new ConcurrentHashMap<>());
        }
    }

    Font font() {
        return SIZED.computeIfAbsent(this, lettering -> FONTS.get(face).deriveFont((float) size));
    }

    double width(String text) {
        Map<String, Double> known = WIDTHS.get(face);
        if (known.size() > MOST_WIDTHS) known.clear();
        return size
                * known.computeIfAbsent(
                        text, t -> FONTS.get(face).getStringBounds(t, EXACT).getWidth() / MEASURED_AT);
    }

    /** Height of a capital letter or figure. */
    double capital() {
        return size * CAPITALS;
    }
}
