package org.mantice.app.view;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JViewport;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.sheet.SheetPainter;

/**
 * Keeps what the player looks at where it is on the screen while the sheet around it is laid out anew: what is pointed at
 * if it is in view, else the first measure in view.
 */
final class SheetAnchor {
    private final SheetView view;
    private final boolean pointed;
    private final int cell;
    private final double above;

    private SheetAnchor(SheetView view, boolean pointed, int cell, double above) {
        this.view = view;
        this.pointed = pointed;
        this.cell = cell;
        this.above = above;
    }

    static SheetAnchor of(SheetView view) {
        Rectangle seen = view.getVisibleRect();
        Optional<SheetWalk.Stop> stop =
                view.pointer().selected().filter(found -> found.bounds().intersects(seen));
        if (stop.isPresent())
            return new SheetAnchor(view, true, 0, stop.get().bounds().getY() - seen.y);
        Optional<ChordTarget> first = view.sheet().flatMap(sheet -> sheet.chords().stream()
                .filter(target -> target.bounds().getMaxY() >= seen.y)
                .findFirst());
        return first.map(target -> new SheetAnchor(
                        view,
                        false,
                        target.spot().cell(),
                        view.sheet()
                                        .orElseThrow()
                                        .boundsOfCell(target.spot().cell())
                                        .getY()
                                - seen.y))
                .orElseGet(() -> new SheetAnchor(view, false, -1, 0));
    }

    /** Scrolls so far that it is where it was. */
    void hold() {
        if (!(view.getParent() instanceof JViewport viewport)
                || view.getVisibleRect().isEmpty()) return;
        viewport.validate();
        Optional<Double> now = pointed
                ? view.pointer().selected().map(stop -> stop.bounds().getY())
                : view.sheet().flatMap(this::top);
        now.ifPresent(y -> {
            int most = Math.max(0, view.getHeight() - viewport.getExtentSize().height);
            int to = (int) Math.max(0, Math.min(most, Math.round(y - above)));
            viewport.setViewPosition(new Point(viewport.getViewPosition().x, to));
        });
    }

    private Optional<Double> top(SheetPainter sheet) {
        boolean there = sheet.chords().stream().anyMatch(target -> target.spot().cell() == cell);
        return there ? Optional.of(sheet.boundsOfCell(cell).getY()) : Optional.empty();
    }
}
