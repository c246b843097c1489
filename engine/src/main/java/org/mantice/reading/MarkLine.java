package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** Puts the marks of a measure in order and closes hairpins. */
final class MarkLine {
    private final ReadReport report;
    private boolean hairpinOpen;

    MarkLine(ReadReport report) {
        this.report = report;
    }

    /**
     * @param marks of one measure, in any order and perhaps twice
     * @param last whether this is the last measure
     */
    List<Mark> settle(String measure, List<Mark> marks, MusicalTime length, boolean last) {
        List<Mark> sorted = new ArrayList<>(marks.stream().distinct().toList());
        sorted.sort(Comparator.comparing(Mark::offset).thenComparing(mark -> mark instanceof Mark.HairpinEnd ? 0 : 1));
        List<Mark> kept = new ArrayList<>();
        for (Mark mark : sorted) {
            if (mark instanceof Mark.HairpinEnd && !hairpinOpen) {
                report.addAt(measure, SkippedWhat.HAIRPIN);
                continue;
            }
            if (mark instanceof Mark.HairpinStart && hairpinOpen) {
                report.addAt(measure, SkippedWhat.HAIRPIN_CLOSED);
                kept.add(new Mark.HairpinEnd(mark.offset()));
            }
            if (mark instanceof Mark.HairpinStart) hairpinOpen = true;
            if (mark instanceof Mark.HairpinEnd) hairpinOpen = false;
            kept.add(mark);
        }
        if (last && hairpinOpen) {
            report.addAt(measure, SkippedWhat.HAIRPIN_CLOSED);
            kept.add(new Mark.HairpinEnd(length));
        }
        return kept;
    }
}
