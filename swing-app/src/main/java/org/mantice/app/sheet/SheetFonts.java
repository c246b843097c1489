package org.mantice.app.sheet;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.GeneralPath;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.mantice.instrument.RegisterSign;

/**
 * The fonts of the sheet as outlines in staff spaces, origin at the left end of the base line: Bravura 1.392 for signs,
 * DejaVu Sans Condensed for text. Outlines are made once and shared; callers must not change them. Safe from any thread.
 */
final class SheetFonts {
    private static final int REMEMBERED_TEXTS = 4000;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    /** SMuFL 1.4, metrics: one em is four staff spaces. */
    private static final Font MUSIC = load("Bravura.otf").deriveFont(4f);

    private static final Font PLAIN = load("DejaVuSansCondensed.ttf");
    private static final Font BOLD = load("DejaVuSansCondensed-Bold.ttf");
    private static final Map<Glyph, Outline> GLYPHS = glyphs();
    private static final Map<RegisterSign, Outline> REGISTERS = registers();
    private static final Map<Lettering, Outline> TEXTS = new ConcurrentHashMap<>();

    private record Lettering(String text, Face face, double size) {}

    /** Faces of text. */
    enum Face {
        PLAIN,
        BOLD,
        ITALIC,
        BOLD_ITALIC
    }

    /**
     * What is filled to show a sign or a text.
     *
     * @param advance to where the next one would begin
     * @param bounds of the ink
     */
    record Outline(Shape shape, double advance, Rectangle2D bounds) {}

    private SheetFonts() {}

    /** Bravura, of any size. */
    static Font music() {
        return MUSIC;
    }

    /** DejaVu Sans Condensed, of any size. */
    static Font plain() {
        return PLAIN;
    }

    static Font bold() {
        return BOLD;
    }

    static Outline glyph(Glyph glyph) {
        return Objects.requireNonNull(GLYPHS.get(glyph));
    }

    /** The standard's sign of a treble register. */
    static Outline register(RegisterSign sign) {
        return Objects.requireNonNull(REGISTERS.get(sign));
    }

    /** @param size of the em, in staff spaces */
    static Outline text(String text, Face face, double size) {
        if (TEXTS.size() > REMEMBERED_TEXTS) TEXTS.clear();
        return TEXTS.computeIfAbsent(new Lettering(text, face, size), SheetFonts::letter);
    }

    private static Outline letter(Lettering lettering) {
        Font font =
                switch (lettering.face()) {
                    case PLAIN -> PLAIN;
                    case BOLD -> BOLD;
                    case ITALIC -> PLAIN.deriveFont(Font.ITALIC);
                    case BOLD_ITALIC -> BOLD.deriveFont(Font.ITALIC);
                };
        return outline(font.deriveFont((float) lettering.size()), lettering.text());
    }

    private static Map<Glyph, Outline> glyphs() {
        Map<Glyph, Outline> outlines = new EnumMap<>(Glyph.class);
        for (Glyph glyph : Glyph.values()) outlines.put(glyph, outline(MUSIC, Character.toString(glyph.codePoint())));
        return outlines;
    }

    private static Map<RegisterSign, Outline> registers() {
        Map<RegisterSign, Outline> outlines = new EnumMap<>(RegisterSign.class);
        for (RegisterSign sign : RegisterSign.values())
            outlines.put(sign, outline(MUSIC, Character.toString(sign.codePoint())));
        return outlines;
    }

    private static Outline outline(Font font, String text) {
        GlyphVector vector = font.createGlyphVector(EXACT, text);
        GeneralPath path = new GeneralPath(vector.getOutline());
        path.trimToSize();
        return new Outline(path, vector.getLogicalBounds().getWidth(), path.getBounds2D());
    }

    private static Font load(String name) {
        String file = "/org/mantice/app/fonts/" + name;
        try (InputStream in = SheetFonts.class.getResourceAsStream(file)) {
            if (in == null) throw new IllegalStateException("the shipped font " + file + " is missing");
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the shipped font " + file + " cannot be read", e);
        }
    }
}
