package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.mantice.instrument.StradellaBass;
import org.mantice.pattern.PatternChooser;
import org.mantice.performance.PatternSection;
import org.mantice.performance.Performance;

/** What the left hand strikes: the written bass staff as it stands, patterns over chord symbols, or each in its measures. */
final class LeftHandBeats {
    private LeftHandBeats() {}

    static List<Beat> of(Performance performance, StradellaBass bass) {
        return of(performance, note -> !bass.bassButtons(note).isEmpty());
    }

    /** @param hasBass whether there is a bass of this pitch class for runs, 0 to 11 */
    static List<Beat> of(Performance performance, IntPredicate hasBass) {
        PatternChooser patterns = PatternSection.chooser(performance);
        List<Beat> ofPatterns = PatternBeats.of(performance, patterns, hasBass);
        if (performance.bass().isEmpty()) return ofPatterns;
        List<Beat> ofStaff = StaffBeats.of(performance, patterns);
        if (ofPatterns.isEmpty()) return ofStaff;
        List<Beat> both = new ArrayList<>(ofPatterns);
        int staffSpans = ofPatterns.get(ofPatterns.size() - 1).span() + 1;
        ofStaff.forEach(beat -> both.add(beat.with(beat.releaseMicros(), staffSpans + beat.span())));
        both.sort(Comparator.comparing(Beat::onset));
        return joined(both);
    }

    /** Let go where the next is struck; spans numbered in order of play. */
    private static List<Beat> joined(List<Beat> beats) {
        Map<Integer, Integer> spans = new HashMap<>();
        List<Beat> joined = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            Beat beat = beats.get(i);
            long release = i + 1 < beats.size()
                    ? Math.min(beat.releaseMicros(), beats.get(i + 1).onsetMicros())
                    : beat.releaseMicros();
            joined.add(beat.with(release, spans.computeIfAbsent(beat.span(), key -> spans.size())));
        }
        return List.copyOf(joined);
    }
}
