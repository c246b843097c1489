package org.mantice.app.sheet;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Something laid out and ready to be painted, in staff spaces. Nothing is computed or made anew when it is painted.
 */
sealed interface Item {
    /** What it covers. */
    Rectangle2D bounds();

    void paint(Graphics2D graphics, SheetColours colours);

    /**
     * Letters on a base line.
     *
     * @param baseline y of the line the letters stand on
     */
    record Text(String text, Lettering lettering, double x, double baseline, Ink ink, Rectangle2D bounds)
            implements Item {
        /** Begins at x. */
        static Text at(double x, double baseline, String text, Lettering lettering, Ink ink) {
            Rectangle2D bounds = new Rectangle2D.Double(
                    x,
                    baseline - lettering.capital(),
                    lettering.width(text),
                    lettering.capital() + lettering.size() * 0.05);
            return new Text(text, lettering, x, baseline, ink, bounds);
        }

        static Text centred(double x, double baseline, String text, Lettering lettering, Ink ink) {
            return at(x - lettering.width(text) / 2, baseline, text, lettering, ink);
        }

        @Override
        public void paint(Graphics2D graphics, SheetColours colours) {
            graphics.setColor(ink.in(colours));
            graphics.setFont(lettering.font());
            graphics.drawString(text, (float) x, (float) baseline);
        }
    }

    /** A filled shape. */
    record Filled(Shape shape, Ink ink, Rectangle2D bounds) implements Item {
        static Filled of(Shape shape, Ink ink) {
            return new Filled(shape, ink, shape.getBounds2D());
        }

        @Override
        public void paint(Graphics2D graphics, SheetColours colours) {
            graphics.setColor(ink.in(colours));
            graphics.fill(shape);
        }
    }

    /** Straight lines, each painted for itself: as one path all that lies between them would be gone through too. */
    record Lines(List<Line2D> lines, Ink ink, Stroke stroke, Rectangle2D bounds) implements Item {
        public Lines {
            lines = List.copyOf(lines);
        }

        /** @param lines one or more */
        static Lines of(List<Line2D> lines, Ink ink, double thickness) {
            Rectangle2D bounds = lines.get(0).getBounds2D();
            lines.forEach(line -> bounds.add(line.getBounds2D()));
            return new Lines(lines, ink, Drawn.plain(thickness), Drawn.around(bounds, thickness));
        }

        @Override
        public void paint(Graphics2D graphics, SheetColours colours) {
            graphics.setColor(ink.in(colours));
            graphics.setStroke(stroke);
            for (Line2D line : lines) graphics.draw(line);
        }
    }

    /** The outline of a shape. */
    record Drawn(Shape shape, Ink ink, Stroke stroke, Rectangle2D bounds) implements Item {
        static Drawn of(Shape shape, Ink ink, double thickness) {
            return of(shape, ink, thickness, plain(thickness));
        }

        private static Stroke plain(double thickness) {
            return new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
        }

        static Drawn dashed(Shape shape, Ink ink, double thickness, double dash) {
            return of(
                    shape,
                    ink,
                    thickness,
                    new BasicStroke(
                            (float) thickness,
                            BasicStroke.CAP_BUTT,
                            BasicStroke.JOIN_MITER,
                            10,
                            new float[] {(float) dash},
                            0));
        }

        private static Drawn of(Shape shape, Ink ink, double thickness, Stroke stroke) {
            return new Drawn(shape, ink, stroke, around(shape.getBounds2D(), thickness));
        }

        private static Rectangle2D around(Rectangle2D bounds, double thickness) {
            return new Rectangle2D.Double(
                    bounds.getX() - thickness / 2,
                    bounds.getY() - thickness / 2,
                    bounds.getWidth() + thickness,
                    bounds.getHeight() + thickness);
        }

        @Override
        public void paint(Graphics2D graphics, SheetColours colours) {
            graphics.setColor(ink.in(colours));
            graphics.setStroke(stroke);
            graphics.draw(shape);
        }
    }
}
