package org.mantice.app.sheet;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
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
        PLAIN("DejaVuSansCondensed.ttf"),
        BOLD("DejaVuSansCondensed-Bold.ttf"),
        MUSIC("Bravura.otf");

        private final String file;

        Face(String file) {
            this.file = file;
        }
    }

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    /** Fonts are measured large, so that widths do not depend on hinting. */
    private static final int MEASURED_AT = 100;
    /** Of DejaVu Sans: its capitals and figures are 0.73 em high. */
    private static final double CAPITALS = 0.73;

    private static final Map<Face, Font> FONTS = load();
    private static final Map<Lettering, Font> SIZED = new ConcurrentHashMap<>();
    private static final Map<Face, Map<String, Double>> WIDTHS = widths();
    private static final int MOST_WIDTHS = 4000;

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

    Lettering times(double factor) {
        return new Lettering(face, size * factor);
    }

    private static Map<Face, Map<String, Double>> widths() {
        Map<Face, Map<String, Double>> widths = new EnumMap<>(Face.class);
        for (Face face : Face.values()) widths.put(face, new ConcurrentHashMap<>());
        return widths;
    }

    private static Map<Face, Font> load() {
        Map<Face, Font> fonts = new EnumMap<>(Face.class);
        for (Face face : Face.values()) {
            String file = "/org/mantice/app/fonts/" + face.file;
            try (InputStream in = Lettering.class.getResourceAsStream(file)) {
                if (in == null) throw new IllegalStateException("the shipped font " + file + " is missing");
                fonts.put(face, Font.createFont(Font.TRUETYPE_FONT, in).deriveFont((float) MEASURED_AT));
            } catch (IOException | FontFormatException e) {
                throw new IllegalStateException("the shipped font " + file + " cannot be read", e);
            }
        }
        return fonts;
    }
}
