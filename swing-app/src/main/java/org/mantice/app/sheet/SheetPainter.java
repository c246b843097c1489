package org.mantice.app.sheet;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.mantice.app.words.Words;

/**
 * Paints a sheet: staff and strips, line by line. Knows no window; the same painter serves screen, picture and paper.
 * Immutable once made: laying out happens in the constructor.
 */
public final class SheetPainter {
    /**
     * Lays the sheet out.
     *
     * @param width in pixels
     * @param space pixels between two staff lines; 8 is usual
     */
    public SheetPainter(SheetContent content, Words words, double width, double space) {
        throw new UnsupportedOperationException("sheet helpers");
    }

    /** In pixels. */
    public double height() {
        return 0;
    }

    /** Paints what lies in the clip. */
    public void paint(Graphics2D graphics, SheetColours colours, Rectangle clip) {}

    /** A place on the sheet that can be pointed at. */
    public record Target(int band, Spot spot, Rectangle2D bounds) {}

    public Optional<Target> targetAt(double x, double y) {
        return Optional.empty();
    }

    /** Everything that can be pointed at in a band, in order of play and, at one moment, from top to bottom. */
    public List<Target> targets(int band) {
        return List.of();
    }

    /** Where a spot of a band lies; empty if it is not shown. */
    public Optional<Rectangle2D> boundsOf(int band, Spot spot) {
        return Optional.empty();
    }

    /** Where a cell lies, staff and all bands. */
    public Rectangle2D boundsOfCell(int cell) {
        return new Rectangle2D.Double();
    }
}
