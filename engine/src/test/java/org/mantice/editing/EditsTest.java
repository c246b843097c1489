package org.mantice.editing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mantice.editing.TuneEditException.Reason;
import org.mantice.performance.PlayOrder;
import org.mantice.reading.ChordText;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class EditsTest {
    private static final Tune WALTZ = Tunes.in("3/4")
            .title("Waltz")
            .melody("\"C\" C4 q, E4 q, G4 q | \"G7\" F4 h. | R q, \"C\" E4 h | D4 q, F4 q, \"G\" B4 q | @end C4 h.")
            .tune();
    private static final Tune BARE = Tunes.in("4/4")
            .melody("C4 q, E4 q, G4 q, E4 q | F4 q, A4 q, C5 q, A4 q | G4 q, B4 q, D5 q, F5 q | C5 h, E4 q, C4 q")
            .tune();

    @Test
    void a_chord_is_set_where_none_stood() {
        assertThat(chords(edited(WALTZ, new TuneEdit.SetChord(at(1, 1, 2), "Bdim/F"))))
                .containsExactly("0:0 C", "1:0 G7", "1:1/2 Bdim/F", "2:1/4 C", "3:1/2 G");
    }

    @Test
    void a_chord_takes_the_place_of_the_one_that_stands_there() {
        assertThat(chords(edited(WALTZ, new TuneEdit.SetChord(at(1), "Dm7"))))
                .containsExactly("0:0 C", "1:0 Dm7", "2:1/4 C", "3:1/2 G");
    }

    @Test
    void no_chord_is_a_chord_symbol_too() {
        Tune tune = edited(WALTZ, new TuneEdit.SetChord(at(1), "N.C."));

        assertThat(tune.measure(1).chords().get(0).symbol().isSilent()).isTrue();
    }

    @Test
    void in_german_letters_h_is_the_half_tone_below_c() {
        Tune tune = edited(WALTZ, new TuneEdit.SetChord(at(1), "Hm", ChordText.Letters.GERMAN));

        assertThat(chords(tune)).contains("1:0 Bm");
    }

    @Test
    void a_chord_in_brackets_may_be_left_out_and_a_second_one_is_for_later_passes() {
        Tune tune = edited(WALTZ, new TuneEdit.SetChord(at(0), "(Am)"), new TuneEdit.SetChord(at(1), "G7 (Bdim)"));
        PlacedChord optional = tune.measure(0).chords().get(0);
        PlacedChord two = tune.measure(1).chords().get(0);

        assertThat(optional.optional()).isTrue();
        assertThat(two.alternate().orElseThrow()).hasToString("Bdim");
        assertThat(edited(tune, new TuneEdit.MoveChord(at(1), at(4))).measure(4).chords())
                .containsExactly(new PlacedChord(MusicalTime.ZERO, two.symbol(), two.alternate(), false, false));
    }

    @Test
    void a_text_that_is_no_chord_is_refused_at_once() {
        assertThatThrownBy(() -> new TuneEdit.SetChord(at(0), "Hm"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("text is \"Hm\"; allowed: a chord symbol such as Am7, D7/F# or N.C.");
        assertThatThrownBy(() -> new TuneEdit.SetChord(at(0), "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TuneEdit.SetChord(at(0), "Fine")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void places_before_the_measure_are_refused_at_once() {
        WrittenPlace before = at(0, -1, 4);
        assertThatThrownBy(() -> new TuneEdit.RemoveChord(before))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("offset is -1/4; allowed: 0 or more");
        assertThatThrownBy(() -> new TuneEdit.MoveChord(at(0), before)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TuneEdit.SetKey(-1, Key.C_MAJOR))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("measure is -1; allowed: 0 or more");
        assertThatThrownBy(() -> new TuneEdit.SetBarlines(-1, Barlines.PLAIN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_chord_moves_within_its_measure_and_out_of_it() {
        assertThat(chords(edited(WALTZ, new TuneEdit.MoveChord(at(2, 1, 4), at(2)))))
                .containsExactly("0:0 C", "1:0 G7", "2:0 C", "3:1/2 G");
        assertThat(chords(edited(WALTZ, new TuneEdit.MoveChord(at(3, 1, 2), at(4)))))
                .containsExactly("0:0 C", "1:0 G7", "2:1/4 C", "4:0 G");
    }

    @Test
    void a_chord_is_taken_away() {
        assertThat(chords(edited(WALTZ, new TuneEdit.RemoveChord(at(1)))))
                .containsExactly("0:0 C", "2:1/4 C", "3:1/2 G");
    }

    @Test
    void chord_edits_leave_all_else_as_it_is() {
        Tune tune = edited(
                WALTZ,
                new TuneEdit.SetChord(at(4), "C"),
                new TuneEdit.MoveChord(at(4), at(3)),
                new TuneEdit.RemoveChord(at(0)));

        for (int i = 0; i < WALTZ.measures().size(); i++)
            assertThat(tune.measure(i).withChords(List.of()))
                    .isEqualTo(WALTZ.measure(i).withChords(List.of()));
        assertThat(tune.title()).isEqualTo("Waltz");
    }

    @Test
    void edits_are_made_in_their_order() {
        TuneEdit first = new TuneEdit.SetChord(at(1), "F");
        TuneEdit second = new TuneEdit.SetChord(at(1), "Am");

        assertThat(chords(edited(WALTZ, first, second))).contains("1:0 Am");
        assertThat(chords(edited(WALTZ, second, first))).contains("1:0 F");
    }

    @Test
    void a_bare_melody_gets_chords_that_are_marked_as_proposed() {
        EditedTune edited = Edits.apply(BARE, List.of(new TuneEdit.ProposeChords()));

        assertThat(chords(edited.tune())).containsExactly("0:0 ?C", "1:0 ?F", "2:0 ?G7", "3:0 ?C");
        assertThat(edited.proposals())
                .extracting(chord -> chord.place().measure())
                .containsExactly(0, 1, 2, 3);
        assertThat(edited.proposals())
                .allSatisfy(chord -> assertThat(chord.facts()).isNotEmpty());
    }

    @Test
    void written_chords_stay_and_hold_to_the_end_of_their_measure() {
        EditedTune edited =
                Edits.apply(BARE, List.of(new TuneEdit.SetChord(at(1, 1, 2), "Dm"), new TuneEdit.ProposeChords()));

        assertThat(chords(edited.tune())).containsExactly("0:0 ?C", "1:0 ?F", "1:1/2 Dm", "2:0 ?G7", "3:0 ?C");
    }

    @Test
    void a_proposed_chord_that_goes_on_is_named_again_behind_a_written_one() {
        Tune still = Tunes.melody("4/4", "C4 q, E4 q, G4 q, E4 q | C4 q, E4 q, G4 q, E4 q | C4 w | C4 w");
        assertThat(chords(edited(still, new TuneEdit.ProposeChords()))).containsExactly("0:0 ?C");

        assertThat(chords(edited(still, new TuneEdit.SetChord(at(1), "Am"), new TuneEdit.ProposeChords())))
                .containsExactly("0:0 ?C", "1:0 Am", "2:0 ?C");
    }

    @Test
    void a_second_proposal_takes_the_place_of_the_first() {
        assertThat(Edits.apply(BARE, List.of(new TuneEdit.ProposeChords(), new TuneEdit.ProposeChords())))
                .isEqualTo(Edits.apply(BARE, List.of(new TuneEdit.ProposeChords())));
    }

    @Test
    void a_proposed_chord_that_is_accepted_moved_or_set_is_the_players_own() {
        EditedTune edited = Edits.apply(
                BARE,
                List.of(
                        new TuneEdit.ProposeChords(),
                        new TuneEdit.AcceptChord(at(0)),
                        new TuneEdit.MoveChord(at(1), at(1, 1, 2)),
                        new TuneEdit.SetChord(at(2), "G")));

        assertThat(chords(edited.tune())).containsExactly("0:0 C", "1:1/2 F", "2:0 G", "3:0 ?C");
        assertThat(edited.proposals())
                .extracting(chord -> chord.place().measure())
                .containsExactly(3);
    }

    @Test
    void all_proposals_are_accepted_or_dismissed_together() {
        TuneEdit own = new TuneEdit.SetChord(at(1), "Dm");
        TuneEdit propose = new TuneEdit.ProposeChords();

        assertThat(chords(edited(BARE, own, propose, new TuneEdit.AcceptChords())))
                .containsExactly("0:0 C", "1:0 Dm", "2:0 G7", "3:0 C");
        assertThat(edited(BARE, own, propose, new TuneEdit.DismissProposals())).isEqualTo(edited(BARE, own));
    }

    @Test
    void a_phrase_mark_is_set_once_and_taken_away() {
        TuneEdit begins = new TuneEdit.SetPhrase(at(2, 1, 4), true);
        Tune marked = edited(WALTZ, begins);

        assertThat(marked.measure(2).marks()).containsExactly(new Mark.PhraseStart(MusicalTime.QUARTER));
        assertThat(edited(WALTZ, begins, begins)).isEqualTo(marked);
        assertThat(edited(marked, new TuneEdit.SetPhrase(at(2, 1, 4), false))).isEqualTo(WALTZ);
    }

    @Test
    void a_metronome_mark_is_set_replaced_and_taken_away() {
        TuneEdit slow = new TuneEdit.SetTempo(at(1, 1, 4), Optional.of(Tempo.quarters(60)));
        TuneEdit fast = new TuneEdit.SetTempo(at(1, 1, 4), Optional.of(Tempo.quarters(160)));
        TuneEdit none = new TuneEdit.SetTempo(at(1, 1, 4), Optional.empty());

        assertThat(edited(WALTZ, slow, fast).measure(1).marks())
                .containsExactly(new Mark.TempoChange(MusicalTime.QUARTER, Tempo.quarters(160)));
        assertThat(edited(WALTZ, slow, none)).isEqualTo(WALTZ);
    }

    @Test
    void barlines_change_the_order_of_play() {
        Barlines start = barlines(true, Optional.empty());
        Barlines end = barlines(false, Optional.of(3));

        Tune tune = edited(WALTZ, new TuneEdit.SetBarlines(1, start), new TuneEdit.SetBarlines(4, end));

        assertThat(PlayOrder.of(tune)).containsExactly(0, 1, 2, 3, 4, 1, 2, 3, 4, 1, 2, 3, 4);
        assertThat(PlayOrder.of(edited(tune, new TuneEdit.SetBarlines(4, Barlines.PLAIN))))
                .containsExactly(0, 1, 2, 3, 4);
    }

    @Test
    void a_key_holds_up_to_the_next_change_and_moves_no_note() {
        Tune changing = Tunes.melody("2/4", "C4 h | D4 h | @key=1 F#4 h | G4 h | @key=0 C4 h");
        Key aMinor = new Key(0, Mode.MINOR);

        Tune tune = edited(changing, new TuneEdit.SetKey(1, aMinor), new TuneEdit.SetKey(2, new Key(2, Mode.MAJOR)));

        assertThat(tune.measures().stream().map(Measure::key))
                .containsExactly(Key.C_MAJOR, aMinor, new Key(2, Mode.MAJOR), new Key(2, Mode.MAJOR), Key.C_MAJOR);
        assertThat(tune.measures().stream().map(Measure::melody).toList())
                .isEqualTo(changing.measures().stream().map(Measure::melody).toList());
    }

    @Test
    void what_does_not_fit_is_refused_with_number_place_and_what_is_allowed() {
        TuneEdit fits = new TuneEdit.SetChord(at(1), "F");
        Barlines endless = barlines(false, Optional.of(100));
        List<Reason> told = new ArrayList<>();

        told.add(refused(
                "Waltz: edit 2 is in written measure 99; allowed: 1 to 5",
                WALTZ,
                fits,
                new TuneEdit.SetChord(at(98), "C")));
        told.add(refused(
                "Waltz: edit 1 is 3/4 whole notes into measure 2, beat 1; allowed: less than 3/4",
                WALTZ,
                new TuneEdit.SetTempo(at(1, 3, 4), Optional.empty())));
        told.add(refused(
                "Waltz: edit 3: there is no chord at measure 2, beat 3; allowed: a place with a chord",
                WALTZ,
                fits,
                fits,
                new TuneEdit.RemoveChord(at(1, 1, 2))));
        told.add(refused(
                "Waltz: edit 1: the chord G7 stands at measure 2, beat 1 already; allowed: a place without a chord",
                WALTZ,
                new TuneEdit.MoveChord(at(0), at(1))));
        told.add(refused(
                "Waltz: edit 1: the chord C at measure 1, beat 1 is not proposed; allowed: a proposed chord",
                WALTZ,
                new TuneEdit.AcceptChord(at(0))));
        told.add(refused(
                "Waltz: edit 1: no chord is proposed; allowed: a tune with proposed chords",
                WALTZ,
                new TuneEdit.AcceptChords()));
        told.add(refused(
                "the tune: edit 1: no chord can be proposed; allowed: a tune with notes and a measure without a written"
                        + " chord",
                Tunes.melody("3/4", "R h."),
                new TuneEdit.ProposeChords()));
        told.add(refused(
                "Waltz: edit 1: no note begins at measure 3, beat 1; allowed: a place where one does, since a phrase"
                        + " begins with a note",
                WALTZ,
                new TuneEdit.SetPhrase(at(2), true)));
        told.add(refused(
                "Waltz: edit 1: no phrase mark stands at measure 3, beat 1; allowed: a place with one",
                WALTZ,
                new TuneEdit.SetPhrase(at(2), false)));
        told.add(refused(
                "Waltz: edit 1: no metronome mark stands at measure 3, beat 1; allowed: a place with one",
                WALTZ,
                new TuneEdit.SetTempo(at(2), Optional.empty())));
        told.add(refused(
                "Waltz: edit 5: with these barlines at measure 4, beat 1 the tune has more than 20000 measures;"
                        + " allowed: up to that many",
                WALTZ,
                new TuneEdit.SetBarlines(0, barlines(true, Optional.empty())),
                new TuneEdit.SetBarlines(1, barlines(true, Optional.empty())),
                new TuneEdit.SetBarlines(2, barlines(true, Optional.of(100))),
                new TuneEdit.SetBarlines(4, endless),
                new TuneEdit.SetBarlines(3, endless)));

        assertThat(EnumSet.copyOf(told)).isEqualTo(EnumSet.allOf(Reason.class));
    }

    @Test
    void every_kind_of_edit_is_refused_behind_the_last_measure() {
        WrittenPlace behind = at(5);
        for (TuneEdit edit : List.of(
                new TuneEdit.SetChord(behind, "C"),
                new TuneEdit.RemoveChord(behind),
                new TuneEdit.MoveChord(behind, at(0, 1, 4)),
                new TuneEdit.MoveChord(at(0), behind),
                new TuneEdit.AcceptChord(behind),
                new TuneEdit.SetPhrase(behind, true),
                new TuneEdit.SetTempo(behind, Optional.empty()),
                new TuneEdit.SetBarlines(5, Barlines.PLAIN),
                new TuneEdit.SetKey(5, Key.C_MAJOR)))
            assertThatThrownBy(() -> edited(WALTZ, edit))
                    .as("%s", edit)
                    .isInstanceOfSatisfying(TuneEditException.class, refusal -> assertThat(refusal.reason())
                            .isEqualTo(Reason.NO_SUCH_MEASURE));
    }

    private static Reason refused(String message, Tune tune, TuneEdit... edits) {
        try {
            edited(tune, edits);
        } catch (TuneEditException refusal) {
            assertThat(refusal).hasMessage(message);
            assertThat(refusal.code()).isEqualTo(refusal.reason().name());
            return refusal.reason();
        }
        throw new AssertionError("not refused: " + message);
    }

    private static Barlines barlines(boolean start, Optional<Integer> end) {
        return new Barlines(
                start, end, end.isPresent(), List.of(), false, false, false, Optional.empty(), false, false, false);
    }

    private static Tune edited(Tune tune, TuneEdit... edits) {
        return Edits.apply(tune, List.of(edits)).tune();
    }

    /** As {@code "1:1/2 G7"}; a proposed one with a question mark. */
    private static List<String> chords(Tune tune) {
        List<String> chords = new ArrayList<>();
        for (int i = 0; i < tune.measures().size(); i++)
            for (PlacedChord chord : tune.measure(i).chords())
                chords.add(i + ":" + chord.offset() + (chord.proposed() ? " ?" : " ") + chord.symbol());
        return chords;
    }

    private static WrittenPlace at(int measure) {
        return new WrittenPlace(measure, MusicalTime.ZERO);
    }

    private static WrittenPlace at(int measure, int numerator, int denominator) {
        return new WrittenPlace(measure, MusicalTime.of(numerator, denominator));
    }
}
