package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.mantice.reading.MeasureFrames.Frame;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.VoicePicker.Voice;
import org.mantice.tune.Barlines;
import org.mantice.tune.BassEvent;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/**
 * Makes a tune of a score. The melody is, measure by measure, the first voice with notes on the top staff of the chosen
 * part; what the part lacks and another part has for all (chord symbols, tempo, the order of play) is taken from there.
 */
final class TuneBuilder {
    private final TuneSource source;
    private final Score score;
    private final ReadReport report;

    TuneBuilder(TuneSource source, Score score, ReadReport report) {
        this.source = source;
        this.score = score;
        this.report = report;
    }

    ReadTune build(ReadOptions options) {
        MelodyChoice choice = new MelodyChooser(source.place(), score).choose(options);
        ScorePart part = score.parts().stream()
                .filter(each -> each.id().equals(choice.part().id()))
                .findFirst()
                .orElseThrow();
        reportOtherParts(choice);
        List<Measure> measures = measures(part, choice.staff());
        Tune tune = new Tune(score.title(), score.dance(), measures);
        if (!tune.hasNotes()) throw TuneReadException.of(Reason.NOTES_WITHOUT_LENGTH, source.place());
        List<PartInfo> parts = score.parts().stream().map(ScorePart::info).toList();
        return new ReadTune(tune, report.skipped(), parts, choice, source.fingerprint());
    }

    private void reportOtherParts(MelodyChoice choice) {
        if (choice.staff() > 1) report.add(SkippedWhat.TOP_STAFF_EMPTY, String.valueOf(choice.staff()));
        for (ScorePart other : score.parts()) {
            if (other.id().equals(choice.part().id())) continue;
            String label = other.info().label();
            for (ScoreMeasure measure : other.measures())
                for (ScoreNote note : measure.notes())
                    if (note.isMelodic()) report.addAt(measure.number(), SkippedWhat.OTHER_PART_NOTES, label);
        }
    }

    private List<Measure> measures(ScorePart part, int staff) {
        List<VoicePicker> voices =
                part.measures().stream().map(VoicePicker::new).toList();
        List<List<ScoreNote>> chosen = chosenNotes(part, voices, staff);
        List<Frame> frames = new MeasureFrames(score, part, report).read(ends(chosen));
        List<MusicalTime> lengths = frames.stream().map(Frame::length).toList();
        BassStaff bassStaff = new BassStaff(part, staff, report, score.verbatim());
        MelodyLine line = new MelodyLine(report, score.verbatim());
        List<List<BassEvent>> bass = new ArrayList<>();
        for (ScoreMeasure measure : part.measures()) {
            int i = measure.index();
            line.addMeasure(measure, chosen.get(i), lengths.get(i));
            bass.add(bassStaff.read(measure, voices.get(i), lengths.get(i)));
            reportOtherVoices(measure, voices.get(i), staff, bassStaff);
            report.addAllAt(measure.number(), measure.findings());
        }
        List<List<EventDraft>> melody =
                line.finish(part.measures().get(part.measures().size() - 1).number());
        List<Barlines> barlines = barlines(part, lengths);
        if (score.verbatim()) melody.forEach(drafts -> drafts.forEach(EventDraft::takeAsWritten));
        else new TiesAndSlurs(part.measures(), lengths, barlines, report).join(melody);
        new BellowsEffects(part.measures(), melody).apply();
        List<List<PlacedChord>> chords = new ChordLine(lengths, report, score.verbatim())
                .read(chordPart(part).measures());
        ScorePart tempoPart = tempoPart(part);
        List<List<Mark>> written = new ArrayList<>();
        for (ScoreMeasure measure : part.measures())
            written.add(marks(measure, chosen.get(measure.index()), tempoPart, lengths.get(measure.index())));
        if (!score.verbatim()) HairpinWords.addTo(written);
        MarkLine marks = new MarkLine(report);
        List<Measure> measures = new ArrayList<>();
        for (ScoreMeasure measure : part.measures()) {
            int i = measure.index();
            measures.add(new Measure(
                    measure.number(),
                    lengths.get(i),
                    frames.get(i).meter(),
                    measure.key(),
                    frames.get(i).pickup(),
                    events(measure, melody.get(i)),
                    chords.get(i),
                    bass.get(i),
                    score.verbatim()
                            ? written.get(i)
                            : marks.settle(
                                    measure.number(),
                                    written.get(i),
                                    lengths.get(i),
                                    i + 1 == part.measures().size()),
                    barlines.get(i)));
        }
        return measures;
    }

    private List<List<ScoreNote>> chosenNotes(ScorePart part, List<VoicePicker> voices, int staff) {
        List<List<ScoreNote>> chosen = new ArrayList<>();
        for (ScoreMeasure measure : part.measures()) {
            int i = measure.index();
            Optional<Voice> voice = voices.get(i).first(staff);
            List<ScoreNote> notes = voice.map(voices.get(i)::notes).orElse(List.of());
            boolean repeats = measure.repeated() > 0
                    && i >= measure.repeated()
                    && measure.notes().stream().noneMatch(ScoreNote::isMelodic);
            if (repeats) {
                notes = chosen.get(i - measure.repeated());
                report.addAt(measure.number(), SkippedWhat.MEASURE_REPEATED);
            }
            chosen.add(notes);
        }
        return chosen;
    }

    private static List<MusicalTime> ends(List<List<ScoreNote>> chosen) {
        return chosen.stream()
                .map(notes -> notes.stream()
                        .filter(note -> note.kind() != ScoreNote.Kind.MEASURE_REST && !note.cue())
                        .map(ScoreNote::end)
                        .reduce(MusicalTime.ZERO, MusicalTime::max))
                .toList();
    }

    private void reportOtherVoices(ScoreMeasure measure, VoicePicker voices, int staff, BassStaff bass) {
        Optional<Voice> melody = voices.first(staff);
        for (Voice voice : voices.voices()) {
            if (melody.equals(Optional.of(voice)) || bass.holds(voice)) continue;
            for (ScoreNote note : voices.notes(voice))
                if (note.isMelodic())
                    report.addAt(
                            measure.number(),
                            SkippedWhat.OTHER_VOICE_NOTES,
                            voice.name(),
                            String.valueOf(voice.staff()));
        }
    }

    private List<MelodyEvent> events(ScoreMeasure measure, List<EventDraft> drafts) {
        for (EventDraft draft : drafts)
            if (draft.sharesFingers() && !score.verbatim())
                report.addAt(measure.number(), SkippedWhat.FINGERS_SHARED_OUT);
        return drafts.stream().map(draft -> draft.event(score.verbatim())).toList();
    }

    private List<Barlines> barlines(ScorePart part, List<MusicalTime> lengths) {
        ScorePart from = partWith(part, "repeats and jumps", PlayOrderSigns::areIn);
        return new PlayOrderSigns(source.place(), aligned(part, from), lengths, report).read(score.verbatim());
    }

    private ScorePart chordPart(ScorePart part) {
        ScorePart from = score.parts().stream()
                .filter(each -> each.equals(part) && hasChords(part))
                .findFirst()
                .or(() -> score.parts().stream().filter(TuneBuilder::hasChords).findFirst())
                .orElse(part);
        if (!from.equals(part))
            report.add(SkippedWhat.CHORDS_OF_PART, from.info().label());
        return new ScorePart(from.id(), from.name(), aligned(part, from));
    }

    private static boolean hasChords(ScorePart part) {
        return part.measures().stream().anyMatch(measure -> !measure.chords().isEmpty());
    }

    private ScorePart tempoPart(ScorePart part) {
        ScorePart from = partWith(part, "tempo marks", TuneBuilder::hasTempo);
        return new ScorePart(from.id(), from.name(), aligned(part, from));
    }

    private static boolean hasTempo(ScorePart part) {
        return part.measures().stream()
                .flatMap(measure -> measure.signs().stream())
                .anyMatch(TuneBuilder::isTempo);
    }

    private static boolean isTempo(ScoreSign sign) {
        return sign instanceof ScoreSign.Plain plain && plain.mark() instanceof Mark.TempoChange;
    }

    /** The part itself where the condition holds for it or for none; else the first other part. */
    private ScorePart partWith(ScorePart part, String what, Predicate<ScorePart> condition) {
        if (condition.test(part)) return part;
        Optional<ScorePart> other = score.parts().stream().filter(condition).findFirst();
        other.ifPresent(
                from -> report.add(SkippedWhat.SIGNS_OF_PART, what, from.info().label()));
        return other.orElse(part);
    }

    /** As many measures of the other part as this part has. */
    private static List<ScoreMeasure> aligned(ScorePart part, ScorePart from) {
        int size = Math.min(part.measures().size(), from.measures().size());
        List<ScoreMeasure> measures = new ArrayList<>(from.measures().subList(0, size));
        for (ScoreMeasure measure :
                part.measures().subList(size, part.measures().size())) measures.add(measure.withoutContents());
        return measures;
    }

    private List<Mark> marks(ScoreMeasure measure, List<ScoreNote> notes, ScorePart tempoPart, MusicalTime length) {
        List<Mark> marks = new ArrayList<>();
        for (ScoreSign sign : measure.signs()) {
            if (sign instanceof ScoreSign.Plain plain) marks.add(Marks.within(plain.mark(), length));
            if (sign instanceof ScoreSign.Unused unused) report.addAt(measure.number(), unused.finding());
        }
        for (ScoreSign sign : tempoPart.measures().get(measure.index()).signs())
            if (!score.verbatim() && isTempo(sign) && sign instanceof ScoreSign.Plain plain)
                marks.add(Marks.within(plain.mark(), length));
        for (ScoreNote note : notes) note.marks().dynamics().forEach(mark -> marks.add(Marks.within(mark, length)));
        marks.sort(Comparator.comparing(Mark::offset));
        return marks;
    }
}
