package org.mantice.app.sheet;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;

/** Inks dynamics and hairpins in one row: below the staff, above it where there are lyrics. */
final class LoudnessInk {
    private static final double GAP = 0.6;
    private static final double ASCENT = 1.5;
    private static final double DESCENT = 0.6;
    private static final double OPENING = 1.1;
    private static final double AIR = 0.6;

    private final LineInk ink;
    private final StaffLine line;
    private final boolean above;

    private record Sign(Glyph glyph, double x, int cell) {
        double right() {
            return x + SheetFonts.glyph(glyph).advance();
        }
    }

    private record Wedge(double left, double right, double opensFrom, double opensTo, int cell) {}

    LoudnessInk(LineInk ink, StaffLine line, boolean above) {
        this.ink = ink;
        this.line = line;
        this.above = above;
    }

    void write(List<SheetSpans.Hairpin> hairpins) {
        List<Sign> signs = signs();
        List<Wedge> wedges = new ArrayList<>();
        for (SheetSpans.Hairpin hairpin : hairpins) wedge(hairpin, signs, wedges);
        double base = above ? -GAP - DESCENT : 4 + GAP + ASCENT;
        for (Sign sign : signs) base = clear(base, sign.x(), sign.right());
        for (Wedge wedge : wedges) base = clear(base, wedge.left(), wedge.right());
        for (Sign sign : signs) {
            ink.played(line.isPlayed(sign.cell()));
            ink.glyph(sign.glyph(), sign.x(), base);
        }
        for (Wedge wedge : wedges) draw(wedge, base - OPENING / 2);
    }

    private double clear(double base, double left, double right) {
        return above
                ? Math.min(base, ink.highest(left, right, 0) - GAP - DESCENT)
                : Math.max(base, ink.lowest(left, right, 4) + GAP + ASCENT);
    }

    private List<Sign> signs() {
        List<Sign> signs = new ArrayList<>();
        for (int cell = line.first(); cell <= line.last(); cell++) {
            Measure measure = line.of(cell).staff().measure();
            for (Mark mark : measure.marks())
                if (mark instanceof Mark.Dynamic dynamic) {
                    double x = line.of(cell).x(mark.offset().min(measure.length())) - Engraving.HALF_HEAD;
                    signs.add(new Sign(glyph(dynamic.level()), x, cell));
                }
        }
        return signs;
    }

    private static Glyph glyph(Loudness level) {
        return switch (level) {
            case PPP -> Glyph.DYNAMIC_PPP;
            case PP -> Glyph.DYNAMIC_PP;
            case P -> Glyph.DYNAMIC_PIANO;
            case MP -> Glyph.DYNAMIC_MP;
            case MF -> Glyph.DYNAMIC_MF;
            case F -> Glyph.DYNAMIC_FORTE;
            case FF -> Glyph.DYNAMIC_FF;
            case FFF -> Glyph.DYNAMIC_FFF;
        };
    }

    /** Between the dynamics at its ends; half open at a break of lines. */
    private void wedge(SheetSpans.Hairpin hairpin, List<Sign> signs, List<Wedge> wedges) {
        if (hairpin.toCell() < line.first() || hairpin.fromCell() > line.last()) return;
        boolean starts = line.has(hairpin.fromCell());
        boolean ends = line.has(hairpin.toCell());
        double left = starts ? line.of(hairpin.fromCell()).x(hairpin.from()) - Engraving.HALF_HEAD : line.left();
        double right = ends ? line.of(hairpin.toCell()).x(hairpin.to()) - AIR : line.right() - AIR;
        for (Sign sign : signs) {
            if (sign.x() <= left + 0.1 && sign.right() > left) left = sign.right() + AIR;
            if (sign.x() > left && sign.x() < right + AIR) right = sign.x() - AIR;
        }
        if (right - left < 1) return;
        double from = starts ? 0 : 0.5;
        double to = ends ? 1 : 0.5;
        int cell = Math.max(hairpin.fromCell(), line.first());
        wedges.add(
                hairpin.crescendo()
                        ? new Wedge(left, right, from, to, cell)
                        : new Wedge(left, right, starts ? 1 : 0.5, ends ? 0 : 0.5, cell));
    }

    private void draw(Wedge wedge, double middle) {
        ink.played(line.isPlayed(wedge.cell()));
        for (int side = -1; side <= 1; side += 2) {
            double y1 = middle + side * wedge.opensFrom() * OPENING / 2;
            double y2 = middle + side * wedge.opensTo() * OPENING / 2;
            double half = Engraving.HAIRPIN / 2;
            Path2D stroke = new Path2D.Double();
            stroke.moveTo(wedge.left(), y1 - half);
            stroke.lineTo(wedge.right(), y2 - half);
            stroke.lineTo(wedge.right(), y2 + half);
            stroke.lineTo(wedge.left(), y1 + half);
            stroke.closePath();
            ink.shape(stroke);
        }
    }
}
