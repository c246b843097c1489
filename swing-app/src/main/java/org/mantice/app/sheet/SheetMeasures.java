package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.performance.Performance;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/** What each cell of a sheet shows on its staff, given the cell before it. */
final class SheetMeasures {
    private record Shown(int written, List<PlacedChord> chords) {}

    private final List<Cell> cells;
    private final List<StaffMeasure> measures = new ArrayList<>();
    private final boolean unrolled;
    private final boolean leftHand;

    SheetMeasures(SheetContent content) {
        cells = content.cells();
        Tune tune = content.performance().tune();
        unrolled = isUnrolled(cells, tune);
        leftHand = tune.hasChords() || tune.hasBassStaff();
        Map<Shown, StaffMeasure> known = new HashMap<>();
        for (Cell cell : cells) {
            Measure written = tune.measure(cell.written());
            List<PlacedChord> chords = unrolled ? chordsPlayed(content.performance(), cell, written) : written.chords();
            measures.add(known.computeIfAbsent(
                    new Shown(cell.written(), chords), shown -> StaffMeasure.of(written.withChords(chords))));
        }
    }

    private static boolean isUnrolled(List<Cell> cells, Tune tune) {
        boolean asWritten = cells.size() == tune.measures().size();
        for (int i = 0; i < cells.size(); i++) asWritten &= cells.get(i).written() == i;
        return !asWritten;
    }

    /** In order of play nothing is left to choose: of two chords the one that is played there. */
    private static List<PlacedChord> chordsPlayed(Performance performance, Cell cell, Measure written) {
        if (cell.played().isEmpty()) return written.chords();
        int pass = performance.measures().get(cell.played().getAsInt()).pass();
        return written.chords().stream()
                .flatMap(chord -> performance.settings().chords().inPass(chord, pass).stream())
                .toList();
    }

    int count() {
        return cells.size();
    }

    Cell cell(int index) {
        return cells.get(index);
    }

    StaffMeasure staff(int index) {
        return measures.get(index);
    }

    Measure measure(int index) {
        return measures.get(index).measure();
    }

    /** Whether there is anything for the left hand to play. */
    boolean hasLeftHand() {
        return leftHand;
    }

    /** Whether the measures stand in order of play, so that repeats and jumps are not shown. */
    boolean isUnrolled() {
        return unrolled;
    }

    /** Signs of the order of play; none where the measures stand in that order anyway. */
    Barlines barlines(int index) {
        Barlines written = measure(index).barlines();
        if (!unrolled) return written;
        return new Barlines(
                false,
                Optional.empty(),
                false,
                List.of(),
                false,
                false,
                false,
                Optional.empty(),
                false,
                false,
                written.doubleBar());
    }

    boolean changesKey(int index) {
        return index > 0
                && measure(index).key().fifths() != measure(index - 1).key().fifths();
    }

    /** True for the first cell. */
    boolean changesMeter(int index) {
        return index == 0 || !measure(index).meter().equals(measure(index - 1).meter());
    }

    /** The measure's number jumps against the cell before. */
    boolean jumps(int index) {
        return index > 0 && cell(index).written() != cell(index - 1).written() + 1;
    }

    Opening opening(int index, boolean lineStart) {
        Key before = measure(Math.max(0, index - 1)).key();
        return Opening.of(
                measure(index),
                lineStart,
                changesKey(index),
                changesMeter(index),
                before,
                barlines(index).repeatStart());
    }

    /** At the end of a line that the cell ends. */
    Opening warning(int index) {
        if (index + 1 >= count()) return new Opening(List.of(), false, 0, 0);
        return Opening.warning(
                measure(index + 1),
                changesKey(index + 1),
                changesMeter(index + 1),
                measure(index).key());
    }

    /** Width of the right barline. */
    double closing(int index) {
        if (barlines(index).repeatEnd().isPresent()) return Opening.REPEAT;
        if (isLast(index)) return Engraving.THIN_BAR + Engraving.BAR_GAP + Engraving.THICK_BAR;
        if (barlines(index).doubleBar()) return 2 * Engraving.THIN_BAR + Engraving.BAR_GAP;
        return Engraving.THIN_BAR;
    }

    /** Whether a final bar stands at its end. */
    boolean isLast(int index) {
        return index + 1 == count();
    }
}
