package org.mantice.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.reading.VoicePicker.Voice;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassEvent;
import org.mantice.tune.BassMarks;
import org.mantice.tune.Lyric;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;

/**
 * Reads the written bass staff: all voices of the first staff below the melody that begins with an F clef. A letter (M,
 * m, 7, d) in words or under a note names the chord at its place, and holds for the same written note until it gets
 * another (common practice, no source). A single note with an underlined text that is no letter is a counterbass.
 */
final class BassStaff {
    private final OptionalInt staff;
    private final ReadReport report;
    private final boolean verbatim;
    private final Map<List<Pitch>, BassChordType> letters = new HashMap<>();

    /** @param verbatim rests are kept, and a letter holds only where it stands */
    BassStaff(ScorePart part, int melodyStaff, ReadReport report, boolean verbatim) {
        this.report = report;
        this.verbatim = verbatim;
        this.staff = part.measures().stream()
                .flatMap(measure -> measure.notes().stream())
                .filter(ScoreNote::isMelodic)
                .mapToInt(ScoreNote::staff)
                .filter(number -> number > melodyStaff)
                .distinct()
                .sorted()
                .filter(number -> MelodyChooser.clef(part, number).equals("F"))
                .findFirst();
    }

    boolean holds(Voice voice) {
        return staff.isPresent() && voice.staff() == staff.getAsInt();
    }

    List<BassEvent> read(ScoreMeasure measure, VoicePicker voices, MusicalTime length) {
        List<Struck> struck = new ArrayList<>();
        for (Voice voice : voices.voices())
            if (holds(voice)) struck.addAll(events(measure, voices.notes(voice), length));
        for (ScoreSign sign : measure.signs())
            if (sign instanceof ScoreSign.Letter letter) place(measure, letter, struck);
        List<BassEvent> events = new ArrayList<>();
        for (Struck each : struck) {
            List<Pitch> pitches = each.pitches();
            if (each.letter.isPresent()) letters.put(pitches, each.letter.get());
            Optional<BassChordType> type = each.letter.or(() -> held(pitches));
            boolean tiedBack = each.notes.stream().allMatch(ScoreNote::tieStop);
            events.add(new BassEvent(each.onset, each.duration, pitches, type, tiedBack, each.marks()));
        }
        return events;
    }

    private Optional<BassChordType> held(List<Pitch> pitches) {
        return verbatim ? Optional.empty() : Optional.ofNullable(letters.get(pitches));
    }

    /** One stroke of the left hand while it is put together. */
    private static final class Struck {
        private final MusicalTime onset;
        private MusicalTime duration;
        private final List<ScoreNote> notes = new ArrayList<>();
        private Optional<BassChordType> letter = Optional.empty();

        private Struck(MusicalTime onset, MusicalTime duration) {
            this.onset = onset;
            this.duration = duration;
        }

        private BassMarks marks() {
            OptionalInt finger = notes.stream()
                    .flatMapToInt(note -> note.fingers().stream().mapToInt(Integer::intValue))
                    .findFirst();
            return new BassMarks(isCounterbass(), finger);
        }

        /** D under a note D is its name, under another the letter of a chord. */
        private boolean isCounterbass() {
            if (notes.size() != 1 || !notes.get(0).marks().underlined()) return false;
            return notes.get(0).marks().lyrics().stream()
                    .map(Lyric::text)
                    .allMatch(text -> DirectionWords.letter(text).isEmpty()
                            || pitches().stream()
                                    .anyMatch(it -> it.name().toString().equals(text)));
        }

        private List<Pitch> pitches() {
            return notes.stream()
                    .flatMap(note -> note.pitch().stream())
                    .sorted()
                    .distinct()
                    .toList();
        }
    }

    private List<Struck> events(ScoreMeasure measure, List<ScoreNote> notes, MusicalTime length) {
        List<Struck> struck = new ArrayList<>();
        for (ScoreNote note : notes) {
            if (note.isRest() && !verbatim) continue;
            if (note.isGrace() || note.cue() || note.pitch().isEmpty() && !note.isRest()) {
                report.addAt(measure.number(), whatIsNoBassNote(note));
                continue;
            }
            report.addAllAt(measure.number(), note.findings());
            Struck last = struck.isEmpty() ? null : struck.get(struck.size() - 1);
            MusicalTime duration = note.duration().min(length.minus(note.onset()));
            if (verbatim && note.marks().sameEvent() && last != null)
                last.duration = note.end().minus(last.onset);
            else if (note.inChord() && last != null && last.onset.equals(note.onset())) last.notes.add(note);
            else if (!duration.isPositive()) report.addAt(measure.number(), SkippedWhat.NOTE_WITHOUT_LENGTH);
            else {
                Struck next = new Struck(note.onset(), duration);
                next.notes.add(note);
                struck.add(next);
            }
        }
        for (Struck each : struck) each.letter = each.isCounterbass() ? Optional.empty() : letterUnder(each);
        return struck;
    }

    private static SkippedWhat whatIsNoBassNote(ScoreNote note) {
        if (note.cue()) return SkippedWhat.CUE_NOTES;
        return note.isGrace() ? SkippedWhat.LOST_GRACE : SkippedWhat.UNPITCHED_NOTES;
    }

    private static Optional<BassChordType> letterUnder(Struck struck) {
        return struck.notes.stream()
                .flatMap(note -> note.marks().lyrics().stream())
                .flatMap(lyric -> DirectionWords.letter(lyric.text()).stream())
                .findFirst();
    }

    /** Of what is struck together, the letter belongs to the fuller and then the higher one. */
    private void place(ScoreMeasure measure, ScoreSign.Letter letter, List<Struck> struck) {
        Optional<Struck> chord = struck.stream()
                .filter(each -> each.onset.equals(letter.onset()))
                .max((a, b) -> a.notes.size() != b.notes.size()
                        ? Integer.compare(a.notes.size(), b.notes.size())
                        : Integer.compare(top(a), top(b)));
        chord.ifPresentOrElse(
                each -> each.letter = Optional.of(letter.type()),
                () -> report.addAt(
                        measure.number(),
                        SkippedWhat.DIRECTION,
                        "chord letter " + letter.type().letter() + " without a note"));
    }

    private static int top(Struck struck) {
        return struck.pitches().stream().mapToInt(Pitch::midi).max().orElse(0);
    }
}
