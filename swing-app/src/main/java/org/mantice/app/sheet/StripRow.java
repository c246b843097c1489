package org.mantice.app.sheet;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.mantice.tune.MusicalTime;

/**
 * A strip on one line of the sheet, laid out; in staff spaces from its own top, x from the left of the sheet.
 *
 * @param spots what can be pointed at, in order of play; their bounds do not overlap
 */
record StripRow(Strip strip, double height, List<Item> items, List<Place> spots) {
    /**
     * A spot and the room in which it is pointed at.
     *
     * @param cell index among the sheet's cells
     * @param offset in the cell, to sort by
     */
    record Place(Spot spot, int cell, MusicalTime offset, Rectangle2D bounds) {}

    StripRow {
        items = List.copyOf(items);
        spots = List.copyOf(spots);
    }
}
