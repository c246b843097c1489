package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.Mark;

/**
 * A part of a tune as written.
 *
 * @param letter empty before the first letter
 * @param to after its last measure
 * @param wholly how often it is played as a whole by its own repeat; 1 without such a repeat
 * @param plain it holds no repeats, endings or jumps
 */
record AbcSection(String letter, int from, int to, int wholly, boolean plain) {
    /** The parts of a tune; neighbours with one letter are one. */
    static List<AbcSection> of(List<ScoreMeasure> measures) {
        List<AbcSection> sections = new ArrayList<>();
        String letter = "";
        int from = 0;
        for (int i = 0; i < measures.size(); i++) {
            Optional<String> label = label(measures.get(i));
            if (label.isEmpty() || label.get().equals(letter)) continue;
            if (i > from) sections.add(of(letter, from, measures.subList(from, i)));
            from = i;
            letter = label.get();
        }
        sections.add(of(letter, from, measures.subList(from, measures.size())));
        return sections;
    }

    private static Optional<String> label(ScoreMeasure measure) {
        for (ScoreSign sign : measure.signs())
            if (sign instanceof ScoreSign.Plain plain && plain.mark() instanceof Mark.Rehearsal rehearsal) {
                String text = rehearsal.text().strip();
                if (!text.isEmpty()) return Optional.of(text.substring(0, 1));
            }
        return Optional.empty();
    }

    private static AbcSection of(String letter, int from, List<ScoreMeasure> measures) {
        int last = measures.size() - 1;
        int repeats = 0;
        int times = 1;
        int firstEnding = -1;
        boolean startsInside = false;
        boolean orders = false;
        for (int i = 0; i <= last; i++) {
            orders |= measures.get(i).signs().stream().anyMatch(sign -> sign instanceof ScoreSign.Order);
            for (ScoreBarline barline : measures.get(i).barlines()) {
                if (barline.repeat().equals("forward") && i > 0) startsInside = true;
                if (startsEnding(barline) && firstEnding < 0) firstEnding = i;
                if (!barline.repeat().equals("backward")) continue;
                if (firstEnding < 0 && i < last) startsInside = true;
                repeats++;
                times = Math.max(times, firstEnding >= 0 ? repeats + 1 : Numbers.integer(barline.times(), 2));
            }
        }
        boolean whole = repeats > 0 && !startsInside && !orders;
        return new AbcSection(
                letter, from, from + measures.size(), whole ? times : 1, repeats == 0 && firstEnding < 0 && !orders);
    }

    private static boolean startsEnding(ScoreBarline barline) {
        return barline.ending().isPresent() && barline.ending().get().start();
    }

    /** The measures that are played when it is played once for all: without endings but the last. */
    List<Integer> once(List<ScoreMeasure> measures) {
        int firstEnding = -1;
        int lastEnding = -1;
        for (int i = from; i < to; i++)
            if (measures.get(i).barlines().stream().anyMatch(AbcSection::startsEnding)) {
                if (firstEnding < 0) firstEnding = i;
                lastEnding = i;
            }
        List<Integer> once = new ArrayList<>();
        for (int i = from; i < to; i++) if (firstEnding < 0 || i < firstEnding || i >= lastEnding) once.add(i);
        return once;
    }
}
