package org.mantice.app.sheet;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** The lines of the staff. */
final class PlainStaff {
    private final MeasureGrid grid;

    private PlainStaff(MeasureGrid grid) {
        this.grid = grid;
    }

    static PlainStaff of(SheetContent content, double width) {
        return new PlainStaff(GridSpacing.of(content, width));
    }

    MeasureGrid grid() {
        return grid;
    }

    double height(int line) {
        return 11;
    }

    void paint(int line, Graphics2D graphics, SheetColours colours) {
        graphics.setColor(colours.ink());
        MeasureGrid.Line of = grid.lines().get(line);
        double right = of.boxes().get(of.boxes().size() - 1).right();
        for (int i = 0; i < 5; i++)
            graphics.fill(new Rectangle2D.Double(0, 4 + i, right, 0.12));
        for (MeasureGrid.Box box : of.boxes())
            graphics.fill(new Rectangle2D.Double(box.right() - 0.1, 4, 0.16, 4));
    }
}
