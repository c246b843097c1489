package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;

/** Inks the chord symbols of a line on one base line above everything below them. */
final class ChordInk {
    private static final double GAP = 0.75;
    private static final double LOWEST = -1.5;

    private final LineInk ink;
    private final StaffLine line;

    private record Symbol(SheetFonts.Outline outline, double x, int cell) {}

    ChordInk(LineInk ink, StaffLine line) {
        this.ink = ink;
        this.line = line;
    }

    /** The top of the row, the staff's top line where there are none. */
    double write() {
        List<Symbol> symbols = new ArrayList<>();
        for (int cell = line.first(); cell <= line.last(); cell++) {
            Measure measure = line.of(cell).staff().measure();
            for (PlacedChord chord : measure.chords())
                symbols.add(new Symbol(
                        ChordText.outline(chord),
                        line.of(cell).x(chord.offset().min(measure.length())) - Engraving.HALF_HEAD,
                        cell));
        }
        double base = LOWEST;
        double top = 0;
        for (Symbol symbol : symbols) {
            double right = symbol.x() + symbol.outline().bounds().getMaxX();
            double depth = Math.max(0, symbol.outline().bounds().getMaxY());
            base = Math.min(base, ink.highest(symbol.x() - 0.4, right + 0.5, 0) - GAP - depth);
        }
        for (Symbol symbol : symbols) {
            ink.played(line.isPlayed(symbol.cell()));
            ink.outline(symbol.outline(), symbol.x(), base);
            top = Math.min(top, base + symbol.outline().bounds().getMinY());
        }
        return top;
    }
}
