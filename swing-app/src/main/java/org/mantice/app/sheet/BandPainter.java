package org.mantice.app.sheet;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/** Paints a band of a line: the ground of its strips, then what is laid out on them. */
final class BandPainter {
    private BandPainter() {}

    /**
     * @param clip what is to be painted, in staff spaces from the top of the sheet
     * @return how many items were painted
     */
    static int paint(
            Graphics2D graphics,
            SheetColours colours,
            MeasureGrid.Line boxes,
            SheetLayout.Line line,
            int band,
            Rectangle2D clip) {
        BandBlock block = line.bands().get(band);
        double top = line.bandTops().get(band);
        if (clip.getMaxY() < top - 1 || clip.getMinY() > top + block.height() + 1) return 0;
        int painted = 0;
        AffineTransform before = graphics.getTransform();
        graphics.translate(0, top);
        double left = boxes.boxes().get(0).x();
        double right = boxes.boxes().get(boxes.boxes().size() - 1).right();
        // Whole dots: smooth edges of large grounds cost more than all that stands on them, and are no sharper.
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        for (int row = 0; row < block.rows().size(); row++) {
            graphics.setColor(colours.strip());
            graphics.fill(new Rectangle2D.Double(
                    left,
                    block.tops().get(row),
                    right - left,
                    block.rows().get(row).height()));
        }
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        for (Item item : block.head()) painted += paint(graphics, colours, item, clip, top);
        for (int row = 0; row < block.rows().size(); row++) {
            double down = block.tops().get(row);
            graphics.translate(0, down);
            for (Item item : block.rows().get(row).items()) painted += paint(graphics, colours, item, clip, top + down);
            graphics.translate(0, -down);
        }
        graphics.setTransform(before);
        return painted;
    }

    private static int paint(Graphics2D graphics, SheetColours colours, Item item, Rectangle2D clip, double top) {
        Rectangle2D bounds = item.bounds();
        boolean touched = bounds.getMaxX() >= clip.getMinX()
                && bounds.getMinX() <= clip.getMaxX()
                && bounds.getMaxY() + top >= clip.getMinY()
                && bounds.getMinY() + top <= clip.getMaxY();
        if (touched) item.paint(graphics, colours);
        return touched ? 1 : 0;
    }
}
