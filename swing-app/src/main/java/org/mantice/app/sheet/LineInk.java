package org.mantice.app.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * All that is painted of one line of the staff, in staff spaces from the sheet's left edge and the top line of the
 * staff, y downward; and where ink is already, so that what comes later keeps clear of it.
 */
final class LineInk {
    /** In which colour something is painted. */
    enum Tone {
        /** The lines of the staff. */
        LINE,
        INK,
        /** What is not played in what is shown. */
        FAINT
    }

    /** An upright rectangle, painted to whole dots of the device. */
    record Bar(double x, double y, double width, double height, Tone tone) {}

    /** An outline to be filled. */
    record Fill(Shape shape, Tone tone) {}

    private record Taken(double left, double right, double top, double bottom) {}

    private final List<Bar> bars = new ArrayList<>();
    private final List<Fill> fills = new ArrayList<>();
    private final List<Taken> taken = new ArrayList<>();
    private Tone tone = Tone.INK;
    private double top;
    private double bottom = 4;

    List<Bar> bars() {
        return bars;
    }

    List<Fill> fills() {
        return fills;
    }

    /** The highest ink, 0 (the top line) or less. */
    double top() {
        return top;
    }

    /** The lowest ink, 4 (the bottom line) or more. */
    double bottom() {
        return bottom;
    }

    /** What follows belongs to a measure that is played, or is not. */
    void played(boolean played) {
        tone = played ? Tone.INK : Tone.FAINT;
    }

    void staffLine(double from, double to, int line) {
        bars.add(new Bar(from, line - Engraving.STAFF_LINE / 2, to - from, Engraving.STAFF_LINE, Tone.LINE));
    }

    void bar(double x, double y, double width, double height) {
        bars.add(new Bar(x, y, width, height, tone));
        take(x, x + width, y, y + height);
    }

    void glyph(Glyph glyph, double x, double y) {
        outline(SheetFonts.glyph(glyph), x, y, 1);
    }

    void outline(SheetFonts.Outline outline, double x, double y) {
        outline(outline, x, y, 1);
    }

    void outline(SheetFonts.Outline outline, double x, double y, double scale) {
        AffineTransform place = new AffineTransform(scale, 0, 0, scale, x, y);
        shape(place.createTransformedShape(outline.shape()));
    }

    void shape(Shape shape) {
        quietly(shape);
        Rectangle2D bounds = shape.getBounds2D();
        take(bounds.getMinX(), bounds.getMaxX(), bounds.getMinY(), bounds.getMaxY());
    }

    /** A shape whose bounds say little about where its ink is; the caller says that with {@link #take}. */
    void quietly(Shape shape) {
        fills.add(new Fill(shape, tone));
        Rectangle2D bounds = shape.getBounds2D();
        top = Math.min(top, bounds.getMinY());
        bottom = Math.max(bottom, bounds.getMaxY());
    }

    void take(double left, double right, double from, double to) {
        taken.add(new Taken(left, right, from, to));
        top = Math.min(top, from);
        bottom = Math.max(bottom, to);
    }

    /** Keeps room up to a height, where nothing need be inked. */
    void reach(double y) {
        top = Math.min(top, y);
    }

    /** The highest ink between two places, the given y where all is lower. */
    double highest(double left, double right, double otherwise) {
        double found = otherwise;
        for (Taken one : taken) if (one.right > left && one.left < right) found = Math.min(found, one.top);
        return found;
    }

    /** The lowest ink between two places, the given y where all is higher. */
    double lowest(double left, double right, double otherwise) {
        double found = otherwise;
        for (Taken one : taken) if (one.right > left && one.left < right) found = Math.max(found, one.bottom);
        return found;
    }
}
