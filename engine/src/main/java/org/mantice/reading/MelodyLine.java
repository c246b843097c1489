package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.mantice.tune.MusicalTime;

/** Turns the chosen voice, measure by measure, into melody events without overlaps. */
final class MelodyLine {
    private final ReadReport report;
    private final boolean verbatim;
    private final List<List<EventDraft>> measures = new ArrayList<>();
    private List<List<ScoreNote>> waiting = new ArrayList<>();

    /** @param verbatim grace notes stay at the event beside which they are written, even a rest */
    MelodyLine(ReadReport report, boolean verbatim) {
        this.report = report;
        this.verbatim = verbatim;
    }

    /** @param notes of one voice, in the order of the file */
    void addMeasure(ScoreMeasure measure, List<ScoreNote> notes, MusicalTime length) {
        List<EventDraft> drafts = new ArrayList<>();
        for (ScoreNote note : notes) place(measure, note, drafts, length);
        attachTrailing(drafts);
        measures.add(tidy(measure, drafts, length));
    }

    private void place(ScoreMeasure measure, ScoreNote note, List<EventDraft> drafts, MusicalTime length) {
        if (note.cue() || note.kind() == ScoreNote.Kind.UNPITCHED) {
            report.addAt(measure.number(), note.cue() ? SkippedWhat.CUE_NOTES : SkippedWhat.UNPITCHED_NOTES);
            return;
        }
        report.addAllAt(measure.number(), note.findings());
        if (note.pitch().isEmpty() && !note.isRest()) return; // unreadable, listed among its findings
        EventDraft last = drafts.isEmpty() ? null : drafts.get(drafts.size() - 1);
        if (note.isGrace()) placeGrace(note, drafts);
        else if (verbatim && note.marks().sameEvent() && last != null) last.lengthen(note);
        else if (note.inChord() && last != null && last.onset.equals(note.onset())) join(measure, note, last);
        else start(measure, note, drafts, length);
    }

    private void placeGrace(ScoreNote note, List<EventDraft> drafts) {
        List<List<ScoreNote>> group = waiting;
        if (note.kind() == ScoreNote.Kind.GRACE_AFTER && !drafts.isEmpty()) {
            EventDraft last = drafts.get(drafts.size() - 1);
            if (verbatim || !last.isRest()) group = last.after;
        }
        if (note.inChord() && !group.isEmpty()) group.get(group.size() - 1).add(note);
        else group.add(new ArrayList<>(List.of(note)));
    }

    private void join(ScoreMeasure measure, ScoreNote note, EventDraft last) {
        if (!note.duration().equals(last.duration)) report.addAt(measure.number(), SkippedWhat.CHORD_LENGTH);
        if (!last.add(note)) report.addAt(measure.number(), SkippedWhat.DOUBLED_NOTE);
    }

    private void start(ScoreMeasure measure, ScoreNote note, List<EventDraft> drafts, MusicalTime length) {
        boolean whole = note.kind() == ScoreNote.Kind.MEASURE_REST;
        MusicalTime onset = whole ? MusicalTime.ZERO : note.onset();
        MusicalTime duration = whole ? length : note.duration();
        if (!duration.isPositive()) {
            report.addAt(measure.number(), SkippedWhat.NOTE_WITHOUT_LENGTH);
            return;
        }
        EventDraft draft = new EventDraft(measure.index(), onset, duration);
        draft.add(note);
        if (verbatim || !draft.isRest()) {
            draft.graces.addAll(waiting);
            waiting = new ArrayList<>();
        }
        drafts.add(draft);
    }

    /** Grace notes before the barline belong to the note before them; without one, to the next measure. */
    private void attachTrailing(List<EventDraft> drafts) {
        if (waiting.isEmpty()
                || drafts.isEmpty()
                || drafts.get(drafts.size() - 1).isRest()) return;
        drafts.get(drafts.size() - 1).after.addAll(waiting);
        waiting = new ArrayList<>();
    }

    /** Sorts, joins what starts together, cuts what overlaps. */
    private List<EventDraft> tidy(ScoreMeasure measure, List<EventDraft> drafts, MusicalTime length) {
        List<EventDraft> sorted = new ArrayList<>(drafts);
        sorted.sort(Comparator.comparing((EventDraft draft) -> draft.onset));
        List<EventDraft> kept = new ArrayList<>();
        for (EventDraft draft : sorted) {
            EventDraft last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            if (last != null && draft.onset.isBefore(last.end())) {
                if (last.onset.equals(draft.onset)) {
                    kept.set(kept.size() - 1, merged(measure, last, draft));
                    continue;
                }
                if (!last.isRest()) report.addAt(measure.number(), SkippedWhat.LENGTH_CUT);
                last.duration = draft.onset.minus(last.onset);
            }
            kept.add(draft);
        }
        kept.removeIf(draft -> !draft.onset.isBefore(length));
        for (EventDraft draft : kept) draft.duration = draft.duration.min(length.minus(draft.onset));
        return kept;
    }

    private EventDraft merged(ScoreMeasure measure, EventDraft first, EventDraft second) {
        if (first.isRest()) return second;
        if (second.isRest()) return first;
        report.addAt(measure.number(), SkippedWhat.SAME_PLACE);
        for (ScoreNote note : second.notes)
            if (!first.add(note)) report.addAt(measure.number(), SkippedWhat.DOUBLED_NOTE);
        first.graces.addAll(second.graces);
        first.after.addAll(second.after);
        return first;
    }

    /** The events so far, by measure; grace notes that found no note at all are listed now. */
    List<List<EventDraft>> finish(String lastMeasure) {
        waiting.forEach(together -> together.forEach(note -> report.addAt(lastMeasure, SkippedWhat.LOST_GRACE)));
        return measures;
    }
}
