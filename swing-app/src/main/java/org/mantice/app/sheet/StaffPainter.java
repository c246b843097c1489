package org.mantice.app.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.mantice.app.words.Words;
import org.mantice.performance.Performance;

/**
 * Paints the staff of a sheet, line by line: melody, chord symbols, lyrics and all signs, at the tune's own pitch. A
 * written bass staff is not shown. Everything is laid out in the constructor; painting only fills. Safe from any thread.
 */
final class StaffPainter {
    private final List<LineInk> lines = new ArrayList<>();
    private final List<List<ChordInk.Placed>> chords = new ArrayList<>();

    StaffPainter(SheetContent content, MeasureGrid grid, Words words) {
        SheetMeasures sheet = new SheetMeasures(content);
        SheetSpans spans = new SheetSpans(sheet);
        Performance performance = content.performance();
        TempoText tempo = new TempoText(sheet, performance.settings(), performance.tune(), words);
        for (MeasureGrid.Line line : grid.lines())
            lines.add(lay(new StaffLine(sheet, line, grid.width()), spans, words, tempo));
    }

    /** From the staff outward: each kind of sign keeps clear of those before it. */
    private LineInk lay(StaffLine line, SheetSpans spans, Words words, TempoText tempo) {
        LineInk ink = new LineInk();
        new SignInk(ink, line).write();
        List<NoteMarkInk> marks = new ArrayList<>();
        for (int cell = line.first(); cell <= line.last(); cell++) {
            ink.played(line.isPlayed(cell));
            new NoteInk(ink, line.of(cell)).write();
            NoteMarkInk mark = new NoteMarkInk(ink, line.of(cell), words, line.isPlayed(cell));
            mark.writeNear();
            marks.add(mark);
        }
        new TieInk(ink, line).write();
        new SlurInk(ink, line).write(spans.slurs());
        marks.forEach(NoteMarkInk::writeFar);
        boolean lyrics = LyricInk.areOn(line);
        TextInk texts = new TextInk(ink, line, words, tempo);
        texts.numbers();
        new LoudnessInk(ink, line, lyrics).write(spans.hairpins());
        ChordInk symbols = new ChordInk(ink, line);
        double ceiling = symbols.write();
        chords.add(symbols.targets());
        texts.registers();
        new EndingInk(ink, line).write(spans.endings());
        texts.write(ceiling);
        new LyricInk(ink, line).write();
        return ink;
    }

    /** The places of a line's chord symbols, in staff spaces from the top line of its staff. */
    List<ChordInk.Placed> chords(int line) {
        return chords.get(line);
    }

    /** How far a line's ink reaches above the top line of its staff, in staff spaces, 0 or more. */
    double above(int line) {
        return -lines.get(line).top();
    }

    /** How far a line's ink reaches below the bottom line of its staff, in staff spaces, 0 or more. */
    double below(int line) {
        return lines.get(line).bottom() - 4;
    }

    /**
     * Paints a line of the grid.
     *
     * @param graphics with its origin at the sheet's left edge; left as it was
     * @param wantedTop y of the staff's top line, in pixels; moved to the nearest dot of the device
     * @param space between two staff lines, in pixels
     */
    void paint(Graphics2D graphics, int line, double wantedTop, double space, SheetColours colours) {
        double top = onDot(graphics.getTransform(), wantedTop);
        Object smooth = graphics.getRenderingHint(RenderingHints.KEY_ANTIALIASING);
        Object pure = graphics.getRenderingHint(RenderingHints.KEY_STROKE_CONTROL);
        AffineTransform before = graphics.getTransform();
        Color colour = graphics.getColor();
        bars(graphics, lines.get(line), top, space, colours);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.translate(0, top);
        graphics.scale(space, space);
        for (LineInk.Fill fill : lines.get(line).fills()) {
            graphics.setColor(colour(fill.tone(), colours));
            graphics.fill(fill.shape());
        }
        graphics.setTransform(before);
        graphics.setColor(colour);
        if (smooth != null) graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, smooth);
        if (pure != null) graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, pure);
    }

    private static double onDot(AffineTransform device, double y) {
        boolean upright = device.getShearX() == 0 && device.getShearY() == 0 && device.getScaleY() > 0;
        return upright ? snap(y, device.getScaleY(), device.getTranslateY()) : y;
    }

    /** Straight lines fall on whole dots of the device, so that they are crisp and equally thick. */
    private static void bars(Graphics2D graphics, LineInk line, double top, double space, SheetColours colours) {
        AffineTransform device = graphics.getTransform();
        double scaleX = device.getScaleX();
        double scaleY = device.getScaleY();
        boolean upright = device.getShearX() == 0 && device.getShearY() == 0 && scaleX > 0 && scaleY > 0;
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING,
                upright ? RenderingHints.VALUE_ANTIALIAS_OFF : RenderingHints.VALUE_ANTIALIAS_ON);
        Rectangle2D.Double dots = new Rectangle2D.Double();
        for (LineInk.Bar bar : line.bars()) {
            graphics.setColor(colour(bar.tone(), colours));
            double x = snap(bar.x() * space, scaleX, device.getTranslateX());
            double y = snap(top + bar.y() * space, scaleY, device.getTranslateY());
            dots.setRect(x, y, thick(bar.width() * space, scaleX), thick(bar.height() * space, scaleY));
            graphics.fill(dots);
        }
    }

    private static double snap(double place, double scale, double shift) {
        return (Math.rint(place * scale + shift) - shift) / scale;
    }

    private static double thick(double length, double scale) {
        return Math.max(1, Math.rint(length * scale)) / scale;
    }

    private static Color colour(LineInk.Tone tone, SheetColours colours) {
        return tone == LineInk.Tone.INK ? colours.ink() : colours.faint();
    }
}
