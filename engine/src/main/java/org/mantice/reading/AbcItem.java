package org.mantice.reading;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.tune.Articulation;
import org.mantice.tune.Lyric;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/** A note, chord or rest of a voice while it is put together. */
final class AbcItem {
    /** One pitch of it, as written and as it sounds. */
    static final class Tone {
        final Step step;
        final int octave;
        final int alter;
        final Optional<Pitch> pitch;
        final List<Integer> fingers = new ArrayList<>();
        final List<Finding> findings = new ArrayList<>();
        boolean tie;
        boolean tiedBack;

        /** @param pitch sounding; empty where no instrument has it */
        Tone(Step step, int alter, int octave, Optional<Pitch> pitch) {
            this.step = step;
            this.alter = alter;
            this.octave = octave;
            this.pitch = pitch;
        }
    }

    MusicalTime length;
    /** A rest for the whole measure. */
    final boolean whole;

    final List<Tone> tones = new ArrayList<>();
    final List<List<Tone>> graces = new ArrayList<>();
    /** Grace notes behind it, before a bar line. */
    final List<List<Tone>> after = new ArrayList<>();

    final List<String> slurStarts = new ArrayList<>();
    final List<String> slurStops = new ArrayList<>();
    final Set<Articulation> articulations = EnumSet.noneOf(Articulation.class);
    final List<Lyric> lyrics = new ArrayList<>();
    final List<Finding> findings = new ArrayList<>();
    boolean breath;
    boolean fermata;

    AbcItem(MusicalTime length, boolean whole) {
        this.length = length;
        this.whole = whole;
    }

    boolean isRest() {
        return tones.isEmpty();
    }

    void addTo(List<ScoreNote> notes, MusicalTime onset, int run, String voice, int staff) {
        addGraces(notes, graces, onset, run, voice, staff, ScoreNote.Kind.GRACE);
        if (isRest()) notes.add(rest(onset, run, voice, staff));
        for (int i = 0; i < tones.size(); i++)
            notes.add(note(onset, run, voice, staff, tones.get(i), ScoreNote.Kind.NOTE, i > 0));
        addGraces(notes, after, onset, run, voice, staff, ScoreNote.Kind.GRACE_AFTER);
    }

    private void addGraces(
            List<ScoreNote> notes,
            List<List<Tone>> groups,
            MusicalTime onset,
            int run,
            String voice,
            int staff,
            ScoreNote.Kind kind) {
        for (List<Tone> together : groups)
            for (int i = 0; i < together.size(); i++)
                notes.add(note(onset, run, voice, staff, together.get(i), kind, i > 0));
    }

    private ScoreNote rest(MusicalTime onset, int run, String voice, int staff) {
        ScoreNote.Kind kind = whole ? ScoreNote.Kind.MEASURE_REST : ScoreNote.Kind.REST;
        return new ScoreNote(
                onset,
                length,
                run,
                voice,
                staff,
                kind,
                false,
                false,
                Optional.empty(),
                false,
                false,
                List.of(),
                marks(),
                List.copyOf(findings));
    }

    private ScoreNote note(
            MusicalTime onset, int run, String voice, int staff, Tone tone, ScoreNote.Kind kind, boolean inChord) {
        boolean first = kind == ScoreNote.Kind.NOTE && !inChord;
        List<Finding> about = new ArrayList<>(first ? findings : List.of());
        about.addAll(tone.findings);
        return new ScoreNote(
                onset,
                kind == ScoreNote.Kind.NOTE ? length : MusicalTime.ZERO,
                run,
                voice,
                staff,
                kind,
                inChord,
                false,
                tone.pitch,
                tone.tie,
                tone.tiedBack,
                List.copyOf(tone.fingers),
                first ? marks() : NoteMarks.NONE,
                about);
    }

    private NoteMarks marks() {
        return new NoteMarks(
                List.copyOf(slurStarts),
                List.copyOf(slurStops),
                Set.copyOf(articulations),
                breath,
                fermata,
                List.copyOf(lyrics),
                Optional.empty(),
                List.of(),
                false,
                false);
    }
}
