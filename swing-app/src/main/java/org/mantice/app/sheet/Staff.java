package org.mantice.app.sheet;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.mantice.app.words.Words;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;

/** The staff with an even spacing. */
final class Staff {
    private final MeasureGrid grid;

    private Staff(MeasureGrid grid) {
        this.grid = grid;
    }

    static Staff of(SheetContent content, Words words, double width) {
        List<MeasureGrid.Line> lines = new ArrayList<>();
        List<MeasureGrid.Box> boxes = new ArrayList<>();
        double x = 1;
        for (int i = 0; i < content.cells().size(); i++) {
            Cell cell = content.cells().get(i);
            Measure measure = content.performance().tune().measure(cell.written());
            double lead = boxes.isEmpty() ? 7 : 1.7;
            double pitch = 2.4;
            double w = lead + pitch * Math.max(4, measure.melody().size());
            if (!boxes.isEmpty() && x + w > width - 1) {
                lines.add(new MeasureGrid.Line(boxes));
                boxes = new ArrayList<>();
                x = 1;
                lead = 7;
                w = lead + pitch * Math.max(4, measure.melody().size());
            }
            TreeMap<MusicalTime, Double> positions = new TreeMap<>();
            int n = measure.melody().size();
            int k = 0;
            for (MelodyEvent event : measure.melody())
                positions.put(event.offset(), x + lead + (w - lead) * k++ / Math.max(1, n));
            if (n == 0) positions.put(MusicalTime.ZERO, x + lead);
            positions.put(measure.length(), x + w);
            boxes.add(new MeasureGrid.Box(i, cell, x, w, positions));
            x += w;
        }
        lines.add(new MeasureGrid.Line(boxes));
        return new Staff(new MeasureGrid(width, lines));
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
            graphics.fill(new Rectangle2D.Double(1, 4 + i, right - 1, 0.12));
        for (MeasureGrid.Box box : of.boxes())
            graphics.fill(new Rectangle2D.Double(box.right() - 0.1, 4, 0.16, 4));
    }
}
