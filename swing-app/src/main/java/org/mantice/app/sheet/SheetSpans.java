package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.mantice.tune.Barlines;
import org.mantice.tune.Mark;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;

/** What reaches over several signs, perhaps over lines: slurs, hairpins, endings. */
final class SheetSpans {
    /**
     * A slur, with cells and indexes of events.
     *
     * @param openStart it comes from what is not shown before
     * @param openEnd it goes on into what is not shown next
     */
    record Slur(int fromCell, int fromEvent, int toCell, int toEvent, boolean openStart, boolean openEnd) {}

    record Hairpin(int fromCell, MusicalTime from, int toCell, MusicalTime to, boolean crescendo) {}

    /** @param closed a hook ends it, as before a repeat */
    record Ending(int fromCell, int toCell, List<Integer> numbers, boolean closed) {}

    private final SheetMeasures sheet;
    private final List<Slur> slurs = new ArrayList<>();
    private final List<Hairpin> hairpins = new ArrayList<>();
    private final List<Ending> endings = new ArrayList<>();

    SheetSpans(SheetMeasures sheet) {
        this.sheet = sheet;
        findSlurs();
        findHairpins();
        findEndings();
    }

    List<Slur> slurs() {
        return slurs;
    }

    List<Hairpin> hairpins() {
        return hairpins;
    }

    List<Ending> endings() {
        return endings;
    }

    private void findSlurs() {
        List<int[]> open = new ArrayList<>();
        for (int cell = 0; cell < sheet.count(); cell++) {
            if (sheet.jumps(cell)) breakOff(open, cell - 1);
            List<StaffEvent> events = sheet.staff(cell).events();
            for (int i = 0; i < events.size(); i++) {
                StaffEvent event = events.get(i);
                if (event.source().isEmpty()) continue;
                MelodyEvent source = event.source().get();
                if (event.last()) stop(open, cell, i, source.marks().slurStops());
                if (event.first()) for (int k = 0; k < source.marks().slurStarts(); k++) open.add(new int[] {cell, i});
            }
        }
        breakOff(open, sheet.count() - 1);
    }

    private void stop(List<int[]> open, int cell, int event, int stops) {
        for (int k = 0; k < stops; k++) {
            if (open.isEmpty()) {
                if (event > 0) slurs.add(new Slur(cell, 0, cell, event, true, false));
                continue;
            }
            int[] from = open.remove(open.size() - 1);
            slurs.add(new Slur(from[0], from[1], cell, event, false, false));
        }
    }

    private void breakOff(List<int[]> open, int cell) {
        int last = sheet.staff(cell).events().size() - 1;
        for (int[] from : open) slurs.add(new Slur(from[0], from[1], cell, last, false, true));
        open.clear();
    }

    private void findHairpins() {
        int fromCell = -1;
        MusicalTime from = MusicalTime.ZERO;
        boolean crescendo = false;
        for (int cell = 0; cell < sheet.count(); cell++) {
            if (sheet.jumps(cell) && fromCell >= 0) {
                add(fromCell, from, cell - 1, sheet.measure(cell - 1).length(), crescendo);
                fromCell = -1;
            }
            for (Mark mark : sheet.measure(cell).marks()) {
                boolean starts = mark instanceof Mark.HairpinStart;
                if (!starts && !(mark instanceof Mark.HairpinEnd) && !(mark instanceof Mark.Dynamic)) continue;
                if (fromCell >= 0) add(fromCell, from, cell, mark.offset(), crescendo);
                fromCell = starts ? cell : -1;
                from = mark.offset();
                crescendo = mark instanceof Mark.HairpinStart start && start.crescendo();
            }
        }
        int last = sheet.count() - 1;
        if (fromCell >= 0) add(fromCell, from, last, sheet.measure(last).length(), crescendo);
    }

    /** One that ends with a measure's first beat ends at the barline before it. */
    private void add(int fromCell, MusicalTime from, int toCell, MusicalTime to, boolean crescendo) {
        if (to.isZero() && toCell > fromCell)
            add(fromCell, from, toCell - 1, sheet.measure(toCell - 1).length(), crescendo);
        else if (fromCell < toCell || from.isBefore(to))
            hairpins.add(new Hairpin(fromCell, from, toCell, to, crescendo));
    }

    private void findEndings() {
        int from = -1;
        for (int cell = 0; cell < sheet.count(); cell++) {
            Barlines barlines = sheet.barlines(cell);
            boolean starts = !barlines.endingStart().isEmpty();
            if (starts && from >= 0) addEnding(from, cell - 1);
            if (starts) from = cell;
            if (from >= 0 && (barlines.endingStop() || cell == sheet.count() - 1)) {
                addEnding(from, cell);
                from = -1;
            }
        }
    }

    private void addEnding(int from, int to) {
        boolean closed = sheet.barlines(to).repeatEnd().isPresent();
        endings.add(new Ending(from, to, sheet.barlines(from).endingStart(), closed));
    }
}
