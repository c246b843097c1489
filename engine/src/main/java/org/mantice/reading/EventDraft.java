package org.mantice.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.mantice.tune.Articulation;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Lyric;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;

/** A melody event while it is put together. */
final class EventDraft {
    final int measure;
    final MusicalTime onset;
    MusicalTime duration;
    final List<ScoreNote> notes = new ArrayList<>();
    private final List<ScoreNote> lengthening = new ArrayList<>();
    final List<List<ScoreNote>> graces = new ArrayList<>();
    final List<List<ScoreNote>> after = new ArrayList<>();
    final Set<Integer> tiedForward = new TreeSet<>();
    final Set<Integer> tiedBack = new TreeSet<>();
    int slurStarts;
    int slurStops;
    Optional<BellowsEffect> effect = Optional.empty();

    EventDraft(int measure, MusicalTime onset, MusicalTime duration) {
        this.measure = measure;
        this.onset = onset;
        this.duration = duration;
    }

    MusicalTime end() {
        return onset.plus(duration);
    }

    boolean isRest() {
        return notes.stream().noneMatch(note -> note.pitch().isPresent());
    }

    /** Adds a note unless its key is already held. @return whether it was added */
    boolean add(ScoreNote note) {
        boolean doubled = note.pitch().isPresent()
                && notes.stream().anyMatch(other -> other.pitch().isPresent() && midi(other) == midi(note));
        if (!doubled) notes.add(note);
        return !doubled;
    }

    /** A tied note that belongs to this event, because no single note shows its length. */
    void lengthen(ScoreNote note) {
        lengthening.add(note);
        duration = note.end().minus(onset);
    }

    /** Takes ties and slurs as they are written. */
    void takeAsWritten() {
        List<ScoreNote> all = allNotes();
        for (ScoreNote note : all) {
            slurStarts += note.marks().slurStarts().size();
            slurStops += note.marks().slurStops().size();
            if (note.pitch().isEmpty()) continue;
            if (note.tieStop() && note.onset().equals(onset)) tiedBack.add(midi(note));
            if (note.tieStart() && note.end().equals(end())) tiedForward.add(midi(note));
        }
    }

    private List<ScoreNote> allNotes() {
        return Stream.concat(notes.stream(), lengthening.stream()).toList();
    }

    static int midi(ScoreNote note) {
        return note.pitch().orElseThrow().midi();
    }

    Set<Integer> midis() {
        Set<Integer> midis = new TreeSet<>();
        for (ScoreNote note : notes) if (note.pitch().isPresent()) midis.add(midi(note));
        return midis;
    }

    boolean isTouched() {
        return notes.stream().anyMatch(note -> !note.marks().articulations().isEmpty());
    }

    /** Grace notes before, the notes, grace notes after. */
    List<ScoreNote> inOrder() {
        List<ScoreNote> all = new ArrayList<>();
        graces.forEach(all::addAll);
        all.addAll(notes);
        after.forEach(all::addAll);
        return all;
    }

    /** @param verbatim fingers stay at the note at which they are written, and grace notes may be tied */
    MelodyEvent event(boolean verbatim) {
        List<ScoreNote> pitched =
                notes.stream().filter(note -> note.pitch().isPresent()).toList();
        List<List<Integer>> fingers =
                verbatim ? pitched.stream().map(ScoreNote::fingers).toList() : fingers(pitched);
        List<MelodyNote> melody = new ArrayList<>();
        for (int i = 0; i < pitched.size(); i++) {
            int midi = midi(pitched.get(i));
            melody.add(new MelodyNote(
                    pitched.get(i).pitch().orElseThrow(),
                    tiedBack.contains(midi),
                    tiedForward.contains(midi),
                    fingers.get(i)));
        }
        return new MelodyEvent(onset, duration, melody, group(graces, verbatim), group(after, verbatim), marks());
    }

    private static GraceGroup group(List<List<ScoreNote>> graces, boolean tied) {
        return new GraceGroup(graces.stream()
                .map(together -> together.stream()
                        .map(note -> new MelodyNote(
                                note.pitch().orElseThrow(),
                                tied && note.tieStop(),
                                tied && note.tieStart(),
                                note.fingers()))
                        .toList())
                .toList());
    }

    private EventMarks marks() {
        Set<Articulation> articulations = EnumSet.noneOf(Articulation.class);
        Set<Lyric> lyrics = new LinkedHashSet<>();
        for (ScoreNote note : allNotes()) {
            articulations.addAll(note.marks().articulations());
            lyrics.addAll(note.marks().lyrics());
        }
        Optional<BellowsEffect> own = allNotes().stream()
                .flatMap(note -> note.marks().effect().stream())
                .findFirst();
        return new EventMarks(
                slurStarts,
                slurStops,
                articulations,
                allNotes().stream().anyMatch(note -> note.marks().breathAfter()),
                allNotes().stream().anyMatch(note -> note.marks().fermata()),
                List.copyOf(lyrics),
                own.or(() -> effect));
    }

    /** Whether as many fingers stand at one note as the chord has notes, and none at the others. */
    boolean sharesFingers() {
        return notes.size() > 1
                && notes.stream().filter(note -> !note.fingers().isEmpty()).count() == 1
                && notes.stream().anyMatch(note -> note.fingers().size() == notes.size());
    }

    /** Fingers per note; shared out with the lower number on the lower note, as the right hand lies. */
    private List<List<Integer>> fingers(List<ScoreNote> pitched) {
        if (!sharesFingers()) return pitched.stream().map(ScoreNote::fingers).toList();
        List<Integer> all = pitched.stream()
                .flatMap(note -> note.fingers().stream())
                .sorted()
                .toList();
        List<ScoreNote> upward =
                pitched.stream().sorted(Comparator.comparing(EventDraft::midi)).toList();
        return pitched.stream()
                .map(note -> List.of(all.get(upward.indexOf(note))))
                .toList();
    }
}
