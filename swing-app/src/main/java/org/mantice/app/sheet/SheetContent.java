package org.mantice.app.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Performance;

/**
 * All that a sheet shows.
 *
 * @param cells in order; one or more
 * @param bands none (the bare staff) to four
 * @param strips those not hidden
 * @param selectedBand index of the band in which something is selected; meaningless without a selection
 * @param selected what the player points at
 * @param current the difference stepped to: every band marks it
 */
public record SheetContent(
        Performance performance,
        Accordion accordion,
        List<Cell> cells,
        List<PlanBand> bands,
        Set<Strip> strips,
        int selectedBand,
        Optional<Spot> selected,
        Optional<Spot> current) {
    public SheetContent {
        cells = List.copyOf(cells);
        bands = List.copyOf(bands);
        EnumSet<Strip> shown = EnumSet.noneOf(Strip.class);
        shown.addAll(strips);
        strips = java.util.Collections.unmodifiableSet(shown);
    }
}
