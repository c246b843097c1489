package org.mantice.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.mantice.tune.Barlines;
import org.mantice.tune.MusicalTime;

/**
 * Joins both ends of ties and slurs over the whole melody. An end without its other end is left out, except where the
 * order of play may bring the two together: before a repeat or jump, and at the start of what is jumped to.
 */
final class TiesAndSlurs {
    private final List<ScoreMeasure> measures;
    private final List<MusicalTime> lengths;
    private final List<Barlines> barlines;
    private final ReadReport report;
    private final Set<Integer> inLaterEnding = new TreeSet<>();

    TiesAndSlurs(List<ScoreMeasure> measures, List<MusicalTime> lengths, List<Barlines> barlines, ReadReport report) {
        this.measures = measures;
        this.lengths = lengths;
        this.barlines = barlines;
        this.report = report;
        boolean inside = false;
        for (int i = 0; i < barlines.size(); i++) {
            List<Integer> numbers = barlines.get(i).endingStart();
            if (!numbers.isEmpty()) inside = !numbers.contains(1);
            if (inside) inLaterEnding.add(i);
            if (barlines.get(i).endingStop()) inside = false;
        }
    }

    void join(List<List<EventDraft>> melody) {
        List<EventDraft> all = melody.stream().flatMap(List::stream).toList();
        for (int i = 0; i < all.size(); i++)
            joinTies(all.get(i), i + 1 < all.size() ? List.of(all.get(i + 1)) : List.of());
        for (EventDraft draft : all) keepTiesBack(draft);
        joinSlurs(all);
    }

    private void joinTies(EventDraft draft, List<EventDraft> next) {
        for (ScoreNote note : draft.notes) {
            if (!note.tieStart() || note.pitch().isEmpty()) continue;
            int midi = EventDraft.midi(note);
            boolean held = next.stream()
                    .filter(other -> follows(draft, other))
                    .flatMap(other -> other.notes.stream())
                    .anyMatch(other -> other.pitch().isPresent() && EventDraft.midi(other) == midi);
            if (held) next.get(0).tiedBack.add(midi);
            if (held || leavesOrderOfPlay(draft)) draft.tiedForward.add(midi);
            else report.addAt(measures.get(draft.measure).number(), SkippedWhat.TIE);
        }
    }

    private boolean follows(EventDraft draft, EventDraft next) {
        if (next.measure == draft.measure) return next.onset.equals(draft.end());
        return next.measure == draft.measure + 1
                && next.onset.isZero()
                && draft.end().equals(lengths.get(draft.measure));
    }

    private void keepTiesBack(EventDraft draft) {
        for (ScoreNote note : draft.notes) {
            if (!note.tieStop() || note.pitch().isEmpty()) continue;
            int midi = EventDraft.midi(note);
            if (draft.tiedBack.contains(midi)) continue;
            if (draft.onset.isZero() && isEnteredByJump(draft.measure)) draft.tiedBack.add(midi);
            else report.addAt(measures.get(draft.measure).number(), SkippedWhat.TIE);
        }
    }

    private boolean leavesOrderOfPlay(EventDraft draft) {
        Barlines signs = barlines.get(draft.measure);
        boolean leaves = signs.repeatEnd().isPresent() || signs.jump().isPresent() || signs.toCoda();
        return leaves && draft.end().equals(lengths.get(draft.measure));
    }

    private boolean isEnteredByJump(int measure) {
        Barlines signs = barlines.get(measure);
        return !signs.endingStart().isEmpty() || signs.repeatStart() || signs.segno() || signs.coda();
    }

    private void joinSlurs(List<EventDraft> all) {
        Map<String, EventDraft> open = new LinkedHashMap<>();
        EventDraft before = null;
        for (EventDraft draft : all) {
            for (ScoreNote note : draft.inOrder()) {
                for (String number : note.marks().slurStops()) {
                    EventDraft start = open.remove(number);
                    if (start != null && start == before && meansTie(start, draft)) tie(start, draft);
                    else stopSlur(draft, start);
                }
                for (String number : note.marks().slurStarts()) {
                    draft.slurStarts++;
                    EventDraft unended = open.put(number, draft);
                    if (unended != null) dropStart(unended);
                }
            }
            before = draft;
        }
        new ArrayList<>(open.values()).forEach(this::dropStart);
    }

    /**
     * Two neighbours on the same keys without touch marks or a syllable on the second: such a slur is a tie drawn with
     * the wrong sign (common practice, no source).
     */
    private boolean meansTie(EventDraft start, EventDraft end) {
        boolean plain = start.after.isEmpty()
                && end.graces.isEmpty()
                && end.notes.stream().allMatch(note -> note.marks().lyrics().isEmpty());
        boolean touched = start.isTouched() || end.isTouched();
        return plain
                && !touched
                && !start.isRest()
                && follows(start, end)
                && start.midis().equals(end.midis())
                && end.tiedBack.isEmpty();
    }

    private void tie(EventDraft start, EventDraft end) {
        start.slurStarts--;
        start.tiedForward.addAll(start.midis());
        end.tiedBack.addAll(end.midis());
        report.addAt(measures.get(start.measure).number(), SkippedWhat.SLUR_AS_TIE);
    }

    /** A slur from a grace note to its own note lies inside one event and says nothing. */
    private void stopSlur(EventDraft draft, EventDraft start) {
        if (start == draft) draft.slurStarts--;
        else if (start != null || inLaterEnding.contains(draft.measure)) draft.slurStops++;
        else report.addAt(measures.get(draft.measure).number(), SkippedWhat.SLUR);
    }

    private void dropStart(EventDraft draft) {
        draft.slurStarts--;
        report.addAt(measures.get(draft.measure).number(), SkippedWhat.SLUR);
    }
}
