package org.mantice.app.sheet;

import java.awt.Shape;
import java.awt.geom.Path2D;

/**
 * A tie or slur: a crescent over or under a straight line.
 *
 * @param rise of its control points, upward negative
 */
record Curve(double x1, double y1, double x2, double y2, double rise) {
    private static final double SHOULDER = 0.25;

    /** The curve's y at a share of its way. */
    double y(double share) {
        return y1 + (y2 - y1) * share + 3 * share * (1 - share) * rise;
    }

    /** The share of the way at an x, which its shoulders make uneven. */
    double share(double x) {
        double low = 0;
        double high = 1;
        for (int step = 0; step < 20; step++) {
            double middle = (low + high) / 2;
            if (x(middle) < x) low = middle;
            else high = middle;
        }
        return low;
    }

    double x(double share) {
        double rest = 1 - share;
        double way =
                3 * share * rest * rest * SHOULDER + 3 * share * share * rest * (1 - SHOULDER) + share * share * share;
        return x1 + (x2 - x1) * way;
    }

    /** The outline: {@link Engraving#CURVE_END} thick at the ends and {@link Engraving#CURVE_MIDDLE} in the middle. */
    Shape outline() {
        double end = Engraving.CURVE_END / 2;
        double middle = (Engraving.CURVE_MIDDLE - Engraving.CURVE_END) / 1.5;
        double outer = rise + Math.copySign(middle, rise);
        double left = x1 + (x2 - x1) * SHOULDER;
        double right = x2 - (x2 - x1) * SHOULDER;
        double slope = (y2 - y1) * SHOULDER;
        double sign = Math.copySign(end, rise);
        Path2D path = new Path2D.Double();
        path.moveTo(x1, y1 + sign);
        path.curveTo(left, y1 + slope + outer + sign, right, y2 - slope + outer + sign, x2, y2 + sign);
        path.lineTo(x2, y2 - sign);
        path.curveTo(right, y2 - slope + rise - sign, left, y1 + slope + rise - sign, x1, y1 - sign);
        path.closePath();
        return path;
    }
}
