package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.mantice.fault.TextPlace;

/** Gathers findings by kind, counted, with their measures. */
final class ReadReport {
    private static final class Tally {
        private final Set<String> measures = new LinkedHashSet<>();
        private final List<TextPlace> lines = new ArrayList<>();
        private int count;
    }

    private final Map<Finding, Tally> tallies = new LinkedHashMap<>();

    void add(SkippedWhat what, String... args) {
        add(Finding.of(what, args));
    }

    void add(Finding finding) {
        tally(finding).count++;
    }

    void addAt(String measure, SkippedWhat what, String... args) {
        addAt(measure, Finding.of(what, args));
    }

    void addAt(String measure, Finding finding) {
        Tally tally = tally(finding);
        tally.count++;
        tally.measures.add(measure);
    }

    void addAt(TextPlace place, Finding finding) {
        Tally tally = tally(finding);
        tally.count++;
        if (tally.lines.size() < Skipped.MOST_LINES) tally.lines.add(place);
    }

    void addAllAt(String measure, List<Finding> findings) {
        findings.forEach(finding -> addAt(measure, finding));
    }

    private Tally tally(Finding finding) {
        return tallies.computeIfAbsent(finding, key -> new Tally());
    }

    List<Skipped> skipped() {
        List<Skipped> list = new ArrayList<>();
        tallies.forEach((finding, tally) -> list.add(
                new Skipped(finding.what(), finding.args(), List.copyOf(tally.measures), tally.lines, tally.count)));
        list.sort(Comparator.comparing(Skipped::what));
        return list;
    }
}
