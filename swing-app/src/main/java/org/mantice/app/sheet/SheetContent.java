package org.mantice.app.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Performance;

/**
 * All that a sheet shows.
 *
 * @param cells in order; one or more
 * @param bands none (the bare staff) to four
 * @param strips those not hidden
 */
public record SheetContent(
        Performance performance,
        Accordion accordion,
        List<Cell> cells,
        List<PlanBand> bands,
        Set<Strip> strips,
        Pointing pointing) {
    public SheetContent {
        cells = List.copyOf(cells);
        bands = List.copyOf(bands);
        EnumSet<Strip> shown = EnumSet.noneOf(Strip.class);
        shown.addAll(strips);
        strips = java.util.Collections.unmodifiableSet(shown);
    }

    /** The same with something else pointed at. */
    public SheetContent pointing(Pointing other) {
        return new SheetContent(performance, accordion, cells, bands, strips, other);
    }
}
