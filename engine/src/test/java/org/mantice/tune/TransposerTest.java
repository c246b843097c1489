package org.mantice.tune;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class TransposerTest {
    private static List<Integer> midis(Tune tune) {
        List<Integer> midis = new ArrayList<>();
        for (Measure measure : tune.measures()) {
            for (MelodyEvent event : measure.melody()) {
                event.graces()
                        .notes()
                        .forEach(notes ->
                                notes.forEach(note -> midis.add(note.pitch().midi())));
                event.notes().forEach(note -> midis.add(note.pitch().midi()));
                event.after()
                        .notes()
                        .forEach(notes ->
                                notes.forEach(note -> midis.add(note.pitch().midi())));
            }
            measure.bass().forEach(event -> event.pitches().forEach(pitch -> midis.add(pitch.midi())));
        }
        return midis;
    }

    private static SortedSet<Integer> shifted(SortedSet<Integer> classes, int semitones) {
        SortedSet<Integer> shifted = new TreeSet<>();
        classes.forEach(each -> shifted.add(Math.floorMod(each + semitones, 12)));
        return shifted;
    }

    private static Tune random(Random random) {
        List<Measure> measures = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Key key = new Key(random.nextInt(15) - 7, Mode.values()[random.nextInt(Mode.values().length)]);
            MelodyNote note = MelodyNote.of(randomPitch(random));
            GraceGroup grace = new GraceGroup(List.of(List.of(MelodyNote.of(randomPitch(random)))));
            MelodyEvent event =
                    new MelodyEvent(MusicalTime.ZERO, MusicalTime.WHOLE, List.of(note), grace, grace, EventMarks.NONE);
            ChordKind kind = ChordKind.values()[random.nextInt(ChordKind.values().length)];
            List<ChordDegree> degrees = List.of(new ChordDegree(
                    1 + random.nextInt(13), random.nextInt(3) - 1, ChordDegree.Change.values()[random.nextInt(3)]));
            ChordSymbol chord = new ChordSymbol(
                    randomPitch(random).name(),
                    kind,
                    degrees,
                    Optional.of(randomPitch(random).name()),
                    "");
            BassEvent bass =
                    new BassEvent(MusicalTime.ZERO, MusicalTime.WHOLE, List.of(randomPitch(random)), Optional.empty());
            measures.add(new Measure(
                    "" + i,
                    MusicalTime.WHOLE,
                    Meter.of(4, 4),
                    key,
                    false,
                    List.of(event),
                    List.of(new PlacedChord(MusicalTime.ZERO, chord)),
                    List.of(bass),
                    List.of(),
                    Barlines.PLAIN));
        }
        return new Tune("", Optional.empty(), measures);
    }

    private static Pitch randomPitch(Random random) {
        return Pitch.of(Step.values()[random.nextInt(7)], random.nextInt(5) - 2, random.nextInt(9));
    }

    @Test
    void every_note_moves_by_the_semitones_and_back_again() {
        Random random = new Random(2);
        for (int i = 0; i < 200; i++)
            for (int semitones = -11; semitones <= 11; semitones++) {
                Tune tune = random(random);
                Tune moved = Transposer.transpose(tune, semitones);
                int up = semitones;

                assertThat(midis(moved))
                        .isEqualTo(midis(tune).stream().map(midi -> midi + up).toList());
                assertThat(midis(Transposer.transpose(moved, -semitones))).isEqualTo(midis(tune));
            }
    }

    @Test
    void the_pitch_classes_of_every_chord_move_exactly() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++)
            for (int semitones = -11; semitones <= 11; semitones++) {
                Tune tune = random(random);
                Tune moved = Transposer.transpose(tune, semitones);

                for (int m = 0; m < tune.measures().size(); m++) {
                    ChordSymbol before = tune.measure(m).chords().get(0).symbol();
                    ChordSymbol after = moved.measure(m).chords().get(0).symbol();
                    assertThat(after.pitchClasses()).isEqualTo(shifted(before.pitchClasses(), semitones));
                    if (!before.isSilent())
                        assertThat(after.bass().orElseThrow().pitchClass())
                                .isEqualTo(Math.floorMod(
                                        before.bass().orElseThrow().pitchClass() + semitones, 12));
                }
            }
    }

    @Test
    void alternates_and_chords_in_brackets_move_along() {
        Tune tune = Tunes.melody("4/4", "\"(G)(Em)\" C4 w");

        assertThat(Transposer.transpose(tune, 2).measure(0).chords())
                .isEqualTo(Tunes.melody("4/4", "\"(A)(F#m)\" C4 w").measure(0).chords());
    }

    @Test
    void a_proposed_chord_stays_proposed() {
        Tune tune = Tunes.melody("4/4", "\"C\" C4 w");
        Measure first = tune.measure(0);
        PlacedChord proposed =
                new PlacedChord(MusicalTime.ZERO, first.chords().get(0).symbol(), true);
        Measure measure = new Measure(
                first.number(),
                first.length(),
                first.meter(),
                first.key(),
                first.pickup(),
                first.melody(),
                List.of(proposed),
                first.bass(),
                first.marks(),
                first.barlines());

        Tune moved = Transposer.transpose(new Tune("", tune.dance(), List.of(measure)), 2);

        assertThat(moved.measure(0).chords().get(0).proposed()).isTrue();
    }

    @Test
    void no_note_gets_a_double_accidental_and_every_key_has_at_most_six_signs() {
        Random random = new Random(4);
        for (int i = 0; i < 200; i++)
            for (int semitones = 1; semitones <= 11; semitones++) {
                Tune moved = Transposer.transpose(random(random), semitones);

                for (Measure measure : moved.measures()) {
                    assertThat(measure.key().fifths()).isBetween(-6, 6);
                    assertThat(measure.melody()
                                    .get(0)
                                    .notes()
                                    .get(0)
                                    .pitch()
                                    .name()
                                    .alter())
                            .isBetween(-1, 1);
                    assertThat(measure.bass().get(0).pitches().get(0).name().alter())
                            .isBetween(-1, 1);
                }
            }
    }

    @Test
    void every_note_of_the_scale_stays_in_the_key() {
        for (int fifths = -7; fifths <= 7; fifths++)
            for (int semitones = -11; semitones <= 11; semitones++) {
                Key key = new Key(fifths, Mode.MAJOR);
                Key to = Transposer.transpose(key, semitones);
                for (int place = -1; place <= 5; place++) {
                    Pitch pitch = new Pitch(NoteName.ofFifths(fifths + place), 4);
                    Tune tune = Tunes.in("4/4").key(fifths).melody(pitch + " w").tune();
                    Tune moved = Transposer.transpose(tune, semitones);

                    NoteName name = moved.measure(0)
                            .melody()
                            .get(0)
                            .notes()
                            .get(0)
                            .pitch()
                            .name();
                    assertThat(name.fifths() - to.fifths()).isEqualTo(place);
                }
            }
    }

    @Test
    void the_key_with_the_fewest_accidentals_is_chosen() {
        assertThat(Transposer.transpose(new Key(0, Mode.MAJOR), 1).tonic()).hasToString("Db");
        assertThat(Transposer.transpose(new Key(0, Mode.MAJOR), -1).tonic()).hasToString("B");
        assertThat(Transposer.transpose(new Key(0, Mode.MINOR), 1).tonic()).hasToString("Bb");
        assertThat(Transposer.transpose(new Key(0, Mode.MAJOR), 6).tonic()).hasToString("Gb");
        assertThat(Transposer.transpose(new Key(1, Mode.MAJOR), -1).tonic()).hasToString("F#");
        assertThat(Transposer.transpose(new Key(-1, Mode.MAJOR), 1).tonic()).hasToString("Gb");
    }

    @Test
    void chords_are_spelled_as_the_new_key_writes_them() {
        Tune tune = Tunes.in("4/4")
                .key(1)
                .melody("\"G\" G4 q, \"D7/F#\" F#4 q, \"Em\" E4 q, \"Eb\" G4 q | \"N.C.\" R w")
                .tune();
        Tune moved = Transposer.transpose(tune, 1);

        assertThat(moved.measure(0).chords())
                .extracting(chord -> chord.symbol().toString())
                .containsExactly("Ab", "Eb7/G", "Fm", "E");
        assertThat(moved.measure(1).chords().get(0).symbol()).hasToString("N.C.");
        assertThat(moved.measure(0).melody())
                .extracting(event -> event.notes().get(0).pitch().toString())
                .containsExactly("Ab4", "G4", "F4", "Ab4");
    }

    @Test
    void octaves_follow_the_letter_over_the_b_to_c_break() {
        Tune moved = Transposer.transpose(Tunes.melody("3/4", "B4 q, C5 q, Bb3 q"), 1);

        assertThat(moved.measure(0).melody())
                .extracting(event -> event.notes().get(0).pitch().toString())
                .containsExactly("C5", "Db5", "Cb4");
        assertThat(Transposer.transpose(Tunes.in("4/4").key(6).melody("E#4 w").tune(), 1)
                        .measure(0)
                        .melody()
                        .get(0)
                        .notes()
                        .get(0)
                        .pitch())
                .hasToString("F#4");
    }

    @Test
    void nothing_changes_by_nothing_and_too_much_is_refused() {
        Tune tune = Tunes.melody("4/4", "C##4 w");

        assertThat(Transposer.transpose(tune, 0)).isEqualTo(tune);
        assertThatThrownBy(() -> Transposer.transpose(tune, 12))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("semitones is 12; allowed: -11 to 11");
    }

    @Test
    void the_nearer_way_to_a_key_is_found() {
        Tune tune = Tunes.in("4/4").key(2).melody("D4 w").tune();

        assertThat(Transposer.semitonesTo(tune, new NoteName(Step.C, 0))).isEqualTo(-2);
        assertThat(Transposer.semitonesTo(tune, new NoteName(Step.A, -1))).isEqualTo(6);
        assertThat(Transposer.semitonesTo(tune, new NoteName(Step.A, 0))).isEqualTo(-5);
        assertThat(Transposer.semitonesTo(tune, new NoteName(Step.D, 0))).isZero();
    }
}
