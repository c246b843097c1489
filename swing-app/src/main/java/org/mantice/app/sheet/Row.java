package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Signs and texts in a row on one base line.
 *
 * @param framed a box is drawn round it
 */
record Row(List<Part> parts, boolean framed) {
    private static final double FRAME = 0.4;
    private static final double AIR = 0.4;

    /** One sign or text at a scale. */
    record Part(SheetFonts.Outline outline, double scale) {
        double width() {
            return outline.advance() * scale;
        }
    }

    Row {
        parts = List.copyOf(parts);
    }

    static Row text(String text, SheetFonts.Face face, double size) {
        return new Row(List.of(new Part(SheetFonts.text(text, face, size), 1)), false);
    }

    static Row framed(String text) {
        return new Row(List.of(new Part(SheetFonts.text(text, SheetFonts.Face.BOLD, Engraving.CHORD_SIZE), 1)), true);
    }

    static Row glyph(Glyph glyph, double scale) {
        return new Row(List.of(new Part(SheetFonts.glyph(glyph), scale)), false);
    }

    Row then(Row other) {
        List<Part> all = new ArrayList<>(parts);
        all.addAll(other.parts());
        return new Row(all, framed);
    }

    double width() {
        double sum = (parts.size() - 1) * AIR + (framed ? 2 * FRAME : 0);
        for (Part part : parts) sum += part.width();
        return sum;
    }

    /** How far it reaches below its base line. */
    double depth() {
        double depth = 0;
        for (Part part : parts) depth = Math.max(depth, part.outline().bounds().getMaxY() * part.scale());
        return depth + (framed ? FRAME : 0);
    }

    private double height() {
        double height = 0;
        for (Part part : parts)
            height = Math.max(height, -part.outline().bounds().getMinY() * part.scale());
        return height;
    }

    void write(LineInk ink, double left, double base) {
        double x = left + (framed ? FRAME : 0);
        for (Part part : parts) {
            ink.outline(part.outline(), x, base, part.scale());
            x += part.width() + AIR;
        }
        if (framed) frame(ink, left, base - height() - FRAME, width(), height() + FRAME + depth());
    }

    private static void frame(LineInk ink, double x, double y, double width, double height) {
        double thick = Engraving.BRACKET;
        ink.bar(x, y, width, thick);
        ink.bar(x, y + height - thick, width, thick);
        ink.bar(x, y, thick, height);
        ink.bar(x + width - thick, y, thick, height);
    }
}
