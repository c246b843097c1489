package org.mantice.app.sheet;

import static org.mantice.app.sheet.Engraving.BAR_GAP;
import static org.mantice.app.sheet.Engraving.REPEAT_DOT;
import static org.mantice.app.sheet.Engraving.REPEAT_DOT_GAP;
import static org.mantice.app.sheet.Engraving.THICK_BAR;
import static org.mantice.app.sheet.Engraving.THIN_BAR;

import org.mantice.tune.Barlines;

/** Inks staff lines, clefs, keys, meters and barlines of a line. */
final class SignInk {
    private static final double HEIGHT = 4;

    private final LineInk ink;
    private final StaffLine line;

    SignInk(LineInk ink, StaffLine line) {
        this.ink = ink;
        this.line = line;
    }

    void write() {
        Opening warning = line.sheet().warning(line.last());
        for (int i = 0; i <= HEIGHT; i++) ink.staffLine(0, line.right() + warning.width(), i);
        for (int cell = line.first(); cell <= line.last(); cell++) {
            PlacedMeasure measure = line.of(cell);
            ink.played(true);
            signs(measure.opening(), measure.box().x());
            ink.played(line.isPlayed(cell));
            boolean repeats = measure.opening().repeatStart();
            boolean joined = repeats
                    && line.has(cell - 1)
                    && line.sheet().barlines(cell - 1).repeatEnd().isPresent();
            if (repeats) repeatStart(measure.box().x() + measure.opening().repeatX(), !joined);
            boolean nextRepeats =
                    line.has(cell + 1) && line.of(cell + 1).opening().repeatStart();
            closing(cell, measure.box().right(), nextRepeats);
        }
        ink.played(true);
        signs(warning, line.right());
    }

    private void signs(Opening opening, double x) {
        for (Opening.Sign sign : opening.signs()) ink.glyph(sign.glyph(), x + sign.x(), Stems.y(sign.place()));
    }

    private void repeatStart(double x, boolean thick) {
        if (thick) ink.bar(x, 0, THICK_BAR, HEIGHT);
        ink.bar(x + THICK_BAR + BAR_GAP, 0, THIN_BAR, HEIGHT);
        dots(x + THICK_BAR + BAR_GAP + THIN_BAR + REPEAT_DOT_GAP);
    }

    private void dots(double x) {
        ink.glyph(Glyph.REPEAT_DOT, x, Stems.y(5));
        ink.glyph(Glyph.REPEAT_DOT, x, Stems.y(3));
    }

    /** A repeat that starts where this measure ends brings its own barline. */
    private void closing(int cell, double right, boolean nextRepeats) {
        Barlines barlines = line.sheet().barlines(cell);
        if (barlines.repeatEnd().isPresent()) {
            double thick = nextRepeats ? right : right - THICK_BAR;
            ink.bar(thick, 0, THICK_BAR, HEIGHT);
            double thin = thick - BAR_GAP - THIN_BAR;
            ink.bar(thin, 0, THIN_BAR, HEIGHT);
            dots(thin - REPEAT_DOT_GAP - REPEAT_DOT);
        } else if (line.sheet().isLast(cell)) {
            ink.bar(right - THICK_BAR, 0, THICK_BAR, HEIGHT);
            ink.bar(right - THICK_BAR - BAR_GAP - THIN_BAR, 0, THIN_BAR, HEIGHT);
        } else if (!nextRepeats) {
            ink.bar(right - THIN_BAR, 0, THIN_BAR, HEIGHT);
            if (barlines.doubleBar()) ink.bar(right - 2 * THIN_BAR - BAR_GAP, 0, THIN_BAR, HEIGHT);
        }
    }
}
