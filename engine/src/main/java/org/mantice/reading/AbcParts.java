package org.mantice.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.mantice.fault.TextPlace;
import org.mantice.reading.ScoreBarline.Location;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.abc.AbcPartOrder;
import org.mantice.tune.MusicalTime;

/**
 * Brings the parts of a tune into the order that its head asks for, by writing them out anew where that differs from
 * how they are written. A letter of the order is one time through its part. Where a repeat plays a part as a whole and
 * the order names the part as often in a row, the two say the same; such a part is played once where the order names it
 * alone after all. All other repeats count as written (see the decision record on reading ABC).
 */
final class AbcParts {
    /** A part in the order, several times in a row. */
    private record Run(AbcSection section, int times) {}

    /** A measure of the new order: which of the written ones, with which barlines. */
    private record Copy(int measure, boolean keepsSigns, boolean opens, int repeats) {}

    private Optional<AbcPartOrder> order = Optional.empty();
    private TextPlace place = new TextPlace(1, 1);

    /** A field that gives the order; a later one replaces it. */
    void order(TextPlace at, String text) {
        AbcPartOrder.read(text).ifPresent(read -> {
            order = Optional.of(read);
            place = at;
        });
    }

    List<ScorePart> inOrder(List<ScorePart> parts, AbcReport report) {
        if (order.isEmpty() || order.get().letters().size() < 2) return parts;
        for (ScorePart part : parts) {
            List<AbcSection> sections = AbcSection.of(part.measures());
            if (sections.size() < 2) continue;
            List<Run> runs = runs(sections, report);
            List<Copy> copies = copies(runs, part.measures(), report);
            if (isAsWritten(copies, part.measures().size())) return parts;
            report.list()
                    .add(
                            SkippedWhat.PARTS_WRITTEN_OUT,
                            String.join("", order.get().letters()));
            return parts.stream().map(each -> rewritten(each, copies)).toList();
        }
        return parts;
    }

    private List<Run> runs(List<AbcSection> sections, AbcReport report) {
        Map<String, List<AbcSection>> byLetter = new HashMap<>();
        for (AbcSection section : sections)
            byLetter.computeIfAbsent(section.letter(), letter -> new ArrayList<>())
                    .add(section);
        List<Run> runs = new ArrayList<>();
        byLetter.getOrDefault("", List.of()).forEach(section -> runs.add(new Run(section, 1)));
        Map<String, Integer> used = new HashMap<>();
        List<String> letters = order.orElseThrow().letters();
        for (int i = 0; i < letters.size(); ) {
            String letter = letters.get(i);
            int times = 1;
            while (i + times < letters.size() && letters.get(i + times).equals(letter)) times++;
            i += times;
            List<AbcSection> named = byLetter.getOrDefault(letter, List.of());
            if (named.isEmpty()) report.add(place, SkippedWhat.PART_OF_ORDER, letter);
            else {
                int turn = used.merge(letter, 1, Integer::sum);
                runs.add(new Run(named.get(Math.min(turn, named.size()) - 1), times));
            }
        }
        return runs;
    }

    private List<Copy> copies(List<Run> runs, List<ScoreMeasure> measures, AbcReport report) {
        Set<AbcSection> doubled = new HashSet<>();
        for (Run run : runs) if (run.times >= run.section.wholly()) doubled.add(run.section);
        List<Copy> copies = new ArrayList<>();
        for (Run run : runs) {
            int wholly = run.section.wholly();
            boolean single = doubled.contains(run.section) && wholly > 1;
            if (run.section.plain() && run.times > 1) addRepeated(copies, run);
            else if (wholly == 1 || !single) addWritten(copies, run.section, run.times, report);
            else {
                addWritten(copies, run.section, run.times / wholly, report);
                for (int i = 0; i < run.times % wholly; i++)
                    for (int measure : run.section.once(measures)) copies.add(new Copy(measure, false, false, 0));
            }
            if (copies.size() > ReadLimits.MEASURES) throw tooMany(report);
        }
        return copies;
    }

    private TuneReadException tooMany(AbcReport report) {
        return TuneReadException.of(Reason.TOO_MANY_MEASURES, report.at(place), ReadLimits.MEASURES);
    }

    private static void addRepeated(List<Copy> copies, Run run) {
        for (int i = run.section.from(); i < run.section.to(); i++)
            copies.add(new Copy(i, true, i == run.section.from(), i + 1 == run.section.to() ? run.times : 0));
    }

    private void addWritten(List<Copy> copies, AbcSection section, int times, AbcReport report) {
        if ((long) times * (section.to() - section.from()) > ReadLimits.MEASURES) throw tooMany(report);
        for (int again = 0; again < times; again++)
            for (int i = section.from(); i < section.to(); i++)
                copies.add(new Copy(i, true, section.wholly() > 1 && i == section.from(), 0));
    }

    private static boolean isAsWritten(List<Copy> copies, int size) {
        if (copies.size() != size) return false;
        for (int i = 0; i < size; i++)
            if (copies.get(i).measure != i || !copies.get(i).keepsSigns || copies.get(i).repeats > 0) return false;
        return true;
    }

    private static ScorePart rewritten(ScorePart part, List<Copy> copies) {
        List<ScoreMeasure> measures = new ArrayList<>();
        for (Copy copy : copies)
            if (copy.measure < part.measures().size()) {
                ScoreMeasure from = part.measures().get(copy.measure);
                measures.add(from.at(measures.size(), barlines(from, copy)));
            } else if (!part.measures().isEmpty()) {
                ScoreMeasure silent =
                        part.measures().get(part.measures().size() - 1).withoutContents();
                measures.add(silent.at(measures.size(), List.of()));
            }
        return new ScorePart(part.id(), part.name(), measures);
    }

    private static List<ScoreBarline> barlines(ScoreMeasure measure, Copy copy) {
        List<ScoreBarline> barlines = new ArrayList<>();
        for (ScoreBarline barline : measure.barlines())
            barlines.add(copy.keepsSigns ? barline : barline.withoutOrder());
        boolean open = barlines.stream().anyMatch(barline -> barline.repeat().equals("forward"));
        if (copy.opens && !open) barlines.add(repeat(MusicalTime.ZERO, Location.LEFT, "forward", ""));
        if (copy.repeats > 0)
            barlines.add(repeat(measure.end(), Location.RIGHT, "backward", String.valueOf(copy.repeats)));
        return barlines;
    }

    private static ScoreBarline repeat(MusicalTime onset, Location location, String direction, String times) {
        return new ScoreBarline(
                onset, location, "regular", direction, times, true, Optional.empty(), false, false, false, List.of());
    }
}
