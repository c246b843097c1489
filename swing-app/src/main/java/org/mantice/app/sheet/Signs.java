package org.mantice.app.sheet;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import org.mantice.plan.LeftHandPlan;
import org.mantice.rule.HandMove;

/** The small signs of the strips, told apart by shape. Each is centred at a point; sizes in staff spaces. */
final class Signs {
    /** Width of a sign, and its height. */
    static final double SIZE = 1.15;

    private static final double THIN = 0.14;

    private Signs() {}

    /** The mark of a plan compared: circle, diamond, square, triangle. @param place 0 to 3 */
    static Item ofPlan(int place, double x, double y, double size) {
        double half = size / 2;
        Shape shape =
                switch (place) {
                    case 0 -> new Ellipse2D.Double(x - half, y - half, size, size);
                    case 1 -> polygon(x, y - half * 1.15, x + half * 1.15, y, x, y + half * 1.15, x - half * 1.15, y);
                    case 2 -> new Rectangle2D.Double(x - half * 0.9, y - half * 0.9, size * 0.9, size * 0.9);
                    default -> polygon(x, y - half, x + half * 1.1, y + half * 0.9, x - half * 1.1, y + half * 0.9);
                };
        return Item.Filled.of(shape, Ink.ofPlan(place));
    }

    static Item tick(double x, double y, double size) {
        Path2D path = open(x - size / 2, y, x - size / 8, y + size * 0.4, x + size / 2, y - size * 0.45);
        return Item.Drawn.of(path, Ink.INK, 0.25);
    }

    static List<Item> padlock(double x, double y) {
        RoundRectangle2D body = new RoundRectangle2D.Double(x - 0.42, y - 0.1, 0.84, 0.66, 0.2, 0.2);
        Path2D shackle = new Path2D.Double(new Arc2D.Double(x - 0.27, y - 0.58, 0.54, 0.7, 0, 180, Arc2D.OPEN));
        return List.of(Item.Filled.of(body, Ink.LOCK), Item.Drawn.of(shackle, Ink.LOCK, THIN * 1.3));
    }

    /** Two bars with a stroke through them: is not equal. */
    static Item differs(double x, double y) {
        Path2D path = new Path2D.Double();
        path.append(new Rectangle2D.Double(x - 0.5, y - 0.32, 1, 0.2), false);
        path.append(new Rectangle2D.Double(x - 0.5, y + 0.12, 1, 0.2), false);
        Area sign = new Area(path);
        sign.add(new Area(polygon(x + 0.18, y - 0.58, x + 0.38, y - 0.58, x - 0.18, y + 0.58, x - 0.38, y + 0.58)));
        return Item.Filled.of(new Path2D.Double(sign), Ink.DIFFERENCE);
    }

    /** Two lines below a text that differs between plans. */
    static Item doubleUnderline(double left, double right, double y) {
        Path2D path = open(left, y, right, y);
        path.append(open(left, y + 0.28, right, y + 0.28), false);
        return Item.Drawn.of(path, Ink.DIFFERENCE, THIN);
    }

    /** A triangle on its base with an exclamation mark cut out: something gave way here. */
    static Item caution(double x, double y) {
        Area sign = new Area(polygon(x, y - 0.65, x + 0.72, y + 0.58, x - 0.72, y + 0.58));
        sign.subtract(new Area(new Rectangle2D.Double(x - 0.09, y - 0.2, 0.18, 0.42)));
        sign.subtract(new Area(new Rectangle2D.Double(x - 0.09, y + 0.3, 0.18, 0.16)));
        return Item.Filled.of(new Path2D.Double(sign), Ink.CAUTION);
    }

    /** A wave for a small jump, a wedge on its point with an exclamation mark cut out for a large one. */
    static Item jump(LeftHandPlan.Jump jump, double x, double y) {
        if (jump == LeftHandPlan.Jump.SMALL) {
            Path2D wave = new Path2D.Double();
            wave.moveTo(x - 0.52, y + 0.14);
            wave.curveTo(x - 0.3, y - 0.42, x - 0.12, y - 0.28, x, y);
            wave.curveTo(x + 0.12, y + 0.28, x + 0.3, y + 0.42, x + 0.52, y - 0.14);
            return Item.Drawn.of(wave, Ink.INK, 0.2);
        }
        Area wedge = new Area(polygon(x - 0.7, y - 0.6, x + 0.7, y - 0.6, x, y + 0.68));
        wedge.subtract(new Area(new Rectangle2D.Double(x - 0.09, y - 0.46, 0.18, 0.4)));
        wedge.subtract(new Area(new Rectangle2D.Double(x - 0.09, y + 0.06, 0.18, 0.16)));
        return Item.Filled.of(new Path2D.Double(wedge), Ink.CAUTION);
    }

    /** A ring with a minus: a tone of the chord is missing. With a plus: a tone sounds that is not of the chord. */
    static Item tones(boolean foreign, double x, double y) {
        Path2D path = new Path2D.Double(new Ellipse2D.Double(x - 0.5, y - 0.5, 1, 1));
        path.append(open(x - 0.28, y, x + 0.28, y), false);
        if (foreign) path.append(open(x, y - 0.28, x, y + 0.28), false);
        return Item.Drawn.of(path, Ink.INK, THIN);
    }

    /** Two arrow heads: apart for a bellows that opens, facing each other for one that closes. */
    static Item stroke(boolean out, double x, double y) {
        double tip = out ? 0.85 : 0.1;
        double back = out ? 0.3 : 0.65;
        Path2D path = new Path2D.Double(polygon(x - tip, y, x - back, y - 0.42, x - back, y + 0.42));
        path.append(polygon(x + tip, y, x + back, y - 0.42, x + back, y + 0.42), false);
        double from = out ? 0.3 : 0.6;
        double to = out ? 0 : 1;
        path.append(new Rectangle2D.Double(x - Math.max(from, to), y - 0.08, Math.abs(to - from), 0.16), false);
        path.append(new Rectangle2D.Double(x + Math.min(from, to), y - 0.08, Math.abs(to - from), 0.16), false);
        return Item.Filled.of(path, Ink.INK);
    }

    /** A zigzag from top to bottom, as a fold of the bellows seen from the side. */
    static Item fold(double x, double top, double base) {
        int corners = 6;
        Path2D path = new Path2D.Double();
        path.moveTo(x, top);
        for (int i = 1; i < corners; i++)
            path.lineTo(x + (i % 2 == 0 ? -0.35 : 0.35), top + i * (base - top) / corners);
        path.lineTo(x, base);
        return Item.Drawn.of(path, Ink.INK, 0.24);
    }

    /** A short stroke across the base: here the play goes on elsewhere. */
    static Item tear(double x, double base) {
        return Item.Drawn.of(open(x - 0.2, base + 0.3, x + 0.2, base - 1.2), Ink.INK, 0.16);
    }

    /** How the hand comes to its place. */
    static Item move(HandMove move, double x, double y) {
        return switch (move) {
            case STAY -> throw new IllegalArgumentException("move is STAY; allowed: a change of hand place");
            case THUMB_UNDER -> Item.Filled.of(polygon(x - 0.5, y + 0.42, x + 0.5, y + 0.42, x, y - 0.45), Ink.INK);
            case FINGER_OVER -> Item.Filled.of(polygon(x - 0.5, y - 0.42, x + 0.5, y - 0.42, x, y + 0.45), Ink.INK);
            case STRETCH -> {
                Path2D bow = new Path2D.Double(polygon(x, y, x - 0.55, y - 0.42, x - 0.55, y + 0.42));
                bow.append(polygon(x, y, x + 0.55, y - 0.42, x + 0.55, y + 0.42), false);
                yield Item.Filled.of(bow, Ink.INK);
            }
            case SHIFT_AT_GAP -> Item.Filled.of(polygon(x - 0.42, y - 0.48, x + 0.5, y, x - 0.42, y + 0.48), Ink.INK);
            case REPEATED_NOTE -> Item.Filled.of(polygon(x, y - 0.5, x + 0.5, y, x, y + 0.5, x - 0.5, y), Ink.INK);
            case GLIDE ->
                Item.Filled.of(
                        polygon(x - 0.55, y + 0.45, x - 0.25, y + 0.45, x + 0.55, y - 0.45, x + 0.25, y - 0.45),
                        Ink.INK);
            case LIFT -> Item.Drawn.of(open(x - 0.45, y + 0.42, x, y - 0.42, x + 0.45, y + 0.42), Ink.INK, 0.2);
        };
    }

    /** Square brackets around a rectangle. */
    static Path2D brackets(Rectangle2D frame) {
        double arm = Math.min(0.9, frame.getWidth() / 2);
        Path2D path = open(
                frame.getX() + arm,
                frame.getY(),
                frame.getX(),
                frame.getY(),
                frame.getX(),
                frame.getMaxY(),
                frame.getX() + arm,
                frame.getMaxY());
        path.append(
                open(
                        frame.getMaxX() - arm,
                        frame.getY(),
                        frame.getMaxX(),
                        frame.getY(),
                        frame.getMaxX(),
                        frame.getMaxY(),
                        frame.getMaxX() - arm,
                        frame.getMaxY()),
                false);
        return path;
    }

    static Path2D polygon(double... points) {
        Path2D path = open(points);
        path.closePath();
        return path;
    }

    static Path2D open(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) path.lineTo(points[i], points[i + 1]);
        return path;
    }
}
