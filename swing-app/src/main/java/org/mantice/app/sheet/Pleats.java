package org.mantice.app.sheet;

import java.awt.geom.Path2D;
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
    static Path2D of(Fan.Piece piece, boolean out, double base, DoubleUnaryOperator yOf) {
        Path2D path = new Path2D.Double();
        path.moveTo(piece.left(), base);
        double step = out ? OUT_STEP : IN_STEP;
        for (double x = piece.left() + step / 2; x < piece.right(); x += step) {
            fold(path, piece, x, out, base, yOf);
            if (!out && x + PAIR < piece.right()) fold(path, piece, x + PAIR, false, base, yOf);
        }
        return path;
    }

    private static void fold(
            Path2D path, Fan.Piece piece, double x, boolean out, double base, DoubleUnaryOperator yOf) {
        double lean = LEAN * (base - yOf.applyAsDouble(piece.millilitresAt(x))) * (out ? 1 : -1);
        double top = Math.max(piece.left(), Math.min(piece.right(), x + lean));
        path.moveTo(x, base);
        path.lineTo(top, yOf.applyAsDouble(piece.millilitresAt(top)));
    }
}
