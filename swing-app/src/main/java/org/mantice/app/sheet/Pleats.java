package org.mantice.app.sheet;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The folds drawn on the fan, so that opening and closing differ without colour: single folds that lean forward when
 * the bellows open, folds in pairs that lean back when they close.
 */
final class Pleats {
    static final double THICKNESS = 0.09;
    private static final double OUT_STEP = 0.95;
    private static final double IN_STEP = 1.5;
    private static final double PAIR = 0.35;
    private static final double LEAN = 0.3;

    private Pleats() {}

    /** @param yOf the y of an opening in millilitres */
    static List<Line2D> of(Fan.Piece piece, boolean out, double base, DoubleUnaryOperator yOf) {
        List<Line2D> folds = new ArrayList<>();
        double step = out ? OUT_STEP : IN_STEP;
        for (double x = piece.left() + step / 2; x < piece.right(); x += step) {
            folds.add(fold(piece, x, out, base, yOf));
            if (!out && x + PAIR < piece.right()) folds.add(fold(piece, x + PAIR, false, base, yOf));
        }
        return folds;
    }

    private static Line2D fold(Fan.Piece piece, double x, boolean out, double base, DoubleUnaryOperator yOf) {
        double lean = LEAN * (base - yOf.applyAsDouble(piece.millilitresAt(x))) * (out ? 1 : -1);
        double top = Math.max(piece.left(), Math.min(piece.right(), x + lean));
        return new Line2D.Double(x, base, top, yOf.applyAsDouble(piece.millilitresAt(top)));
    }
}
