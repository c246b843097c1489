package org.mantice.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class PerformerTest {
    private static Performance at(int quarters, Tune tune) {
        return Performer.perform(
                tune,
                SettingsBuilder.of(tune)
                        .tempo(Tempo.quarters(quarters))
                        .timesThrough(1)
                        .build());
    }

    private static Performance at60(String meter, String text) {
        return at(60, Tunes.melody(meter, text));
    }

    private static List<List<Integer>> keys(Performance performance) {
        return performance.treble().stream()
                .map(moment -> moment.notes().stream()
                        .map(note -> note.held() ? -note.midi() : note.midi())
                        .toList())
                .toList();
    }

    private static List<Long> onsets(Performance performance) {
        return performance.treble().stream().map(TrebleMoment::onsetMicros).toList();
    }

    private static List<Long> releases(Performance performance) {
        return performance.treble().stream().map(TrebleMoment::releaseMicros).toList();
    }

    @Test
    void a_quarter_note_at_sixty_lasts_a_second() {
        Performance performance = at60("3/4", "C4 q, D4 h | R q, E4 e, F4 e");

        assertThat(onsets(performance)).containsExactly(0L, 1_000_000L, 4_000_000L, 4_500_000L);
        assertThat(releases(performance)).containsExactly(1_000_000L, 3_000_000L, 4_500_000L, 5_000_000L);
        assertThat(performance.endMicros()).isEqualTo(6_000_000L);
    }

    @Test
    void a_triplet_eighth_is_a_third_of_a_quarter_rounded_once() {
        Performance performance = at60("2/4", "C4 et, D4 et, E4 et, F4 q");

        assertThat(onsets(performance)).containsExactly(0L, 333_333L, 666_667L, 1_000_000L);
        assertThat(performance.treble().get(1).onset()).isEqualTo(MusicalTime.of(1, 12));
    }

    @Test
    void ties_are_joined_over_barlines() {
        Performance performance = at60("2/4", "C4~ h | ~C4~ h | ~C4 q, C4 q");

        assertThat(keys(performance)).containsExactly(List.of(60), List.of(60));
        assertThat(performance.treble().get(0).duration()).isEqualTo(MusicalTime.of(5, 4));
        assertThat(onsets(performance)).containsExactly(0L, 5_000_000L);
    }

    @Test
    void a_key_tied_under_a_new_one_is_held() {
        Performance performance = at60("2/4", "C4~+E4 q, ~C4+G4 q");

        assertThat(keys(performance)).containsExactly(List.of(60, 64), List.of(-60, 67));
    }

    @Test
    void a_key_let_go_under_a_tie_makes_no_moment_of_its_own() {
        Performance performance = at60("2/4", "C4~+E4 q, ~C4 q");

        assertThat(keys(performance)).containsExactly(List.of(60, 64));
        assertThat(releases(performance)).containsExactly(2_000_000L);
    }

    @Test
    void a_key_held_under_three_others_stays_held() {
        Performance performance = at60("4/4", "C4~+G4 q, ~C4~+A4 q, ~C4~+B4 q, ~C4 q | C4 w");

        assertThat(keys(performance)).containsExactly(List.of(60, 67), List.of(-60, 69), List.of(-60, 71), List.of(60));
        assertThat(performance.treble().get(2).duration()).isEqualTo(MusicalTime.of(1, 2));
    }

    @Test
    void a_tie_into_a_second_ending_is_joined() {
        Performance performance = at60("2/4", "C4 q, D4~ q | @ending1 @end @stop ~D4 h | @ending2 @stop ~D4 q, E4 q");

        assertThat(keys(performance)).containsExactly(List.of(60), List.of(62), List.of(60), List.of(62), List.of(64));
        assertThat(performance.treble().get(1).duration()).isEqualTo(MusicalTime.of(3, 4));
        assertThat(performance.treble().get(3).duration()).isEqualTo(MusicalTime.of(1, 2));
    }

    @Test
    void a_tie_that_leads_nowhere_is_no_tie() {
        assertThat(keys(at60("2/4", "C4~ q, C4 q | R q, ~C4 q")))
                .containsExactly(List.of(60), List.of(60), List.of(60));
        assertThat(keys(at60("2/4", "@start C4~ h | @end ~C4~ h"))).containsExactly(List.of(60), List.of(60));
    }

    @Test
    void the_same_pitch_in_another_spelling_is_tied_too() {
        assertThat(keys(at60("2/4", "C#4~ h | @key=-5 ~Db4 h"))).containsExactly(List.of(61));
    }

    @Test
    void grace_notes_take_their_time_from_the_event() {
        Performance performance = at60("2/4", "{D4;E4} C4 q after{F4}, G4 q");

        assertThat(onsets(performance)).containsExactly(0L, 125_000L, 250_000L, 875_000L, 1_000_000L);
        assertThat(performance.treble()).extracting(TrebleMoment::graceIndex).containsExactly(1, 2, 0, -1, 0);
        assertThat(performance.treble())
                .extracting(TrebleMoment::slurredToNext)
                .containsExactly(true, true, true, false, false);
    }

    @Test
    void many_grace_notes_leave_half_of_a_short_event() {
        Performance performance = at60("2/4", "{D4;E4;D4;E4} C4 s");

        assertThat(onsets(performance)).containsExactly(0L, 31_250L, 62_500L, 93_750L, 125_000L);
    }

    @Test
    void touch_shortens_notes() {
        Performance performance = at60(
                "4/4",
                "C4 q, C4 q stacc, C4 q staccatissimo, C4 q ten | C4 q ( stacc, D4 q ) stacc, C4 q stacc ten, C4 q breath");

        assertThat(releases(performance))
                .containsExactly(
                        1_000_000L, 1_500_000L, 2_250_000L, 4_000_000L, 4_750_000L, 5_500_000L, 6_750_000L, 7_750_000L);
        assertThat(performance.treble().get(7).breathAfter()).isTrue();
    }

    @Test
    void slurs_join_moments_up_to_their_last_note() {
        Performance performance = at60("4/4", "C4 q (, D4 q, E4 q ), F4 q | G4 q ( , A4 q ) (, R q, B4 q )");

        assertThat(performance.treble())
                .extracting(TrebleMoment::slurredToNext)
                .containsExactly(true, true, false, false, true, false, false);
        assertThat(performance.treble())
                .extracting(TrebleMoment::endsSlur)
                .containsExactly(false, false, true, false, false, true, true);
    }

    @Test
    void a_slur_that_never_ends_joins_nothing() {
        assertThat(at60("4/4", "C4 q (, D4 q, E4 q, F4 q").treble()).noneMatch(TrebleMoment::slurredToNext);
        assertThat(at60("4/4", "C4 q (, D4 q, E4 q, F4 q").treble()).noneMatch(TrebleMoment::endsSlur);
    }

    @Test
    void marks_at_the_end_of_a_tied_note_belong_to_it() {
        Performance performance = at60("2/4", "C4~ h ( | ~C4 q ) breath, D4 q");

        TrebleMoment tied = performance.treble().get(0);
        assertThat(tied.breathAfter()).isTrue();
        assertThat(tied.endsSlur()).isTrue();
        assertThat(tied.slurredToNext()).isFalse();
        assertThat(tied.releaseMicros()).isEqualTo(2_750_000L);
    }

    @Test
    void a_fermata_lasts_half_as_long_again_and_moves_no_beat() {
        Performance performance = at60("2/4", "C4 q, D4 q fermata | \"C\" E4 h");

        assertThat(onsets(performance)).containsExactly(0L, 1_000_000L, 2_500_000L);
        assertThat(performance.treble().get(2).onset()).isEqualTo(MusicalTime.of(1, 2));
        assertThat(performance.measures().get(1).startMicros()).isEqualTo(2_500_000L);
        assertThat(performance.harmony().get(1).startMicros()).isEqualTo(2_500_000L);
        assertThat(performance.treble().get(1).breathAfter()).isTrue();
    }

    @Test
    void written_tempo_changes_hold_from_their_place() {
        Performance performance =
                Performer.perform(Tunes.melody("2/4", "!tempo=60 C4 q, !tempo=120 D4 q | E4 h | !tempo=30 F4 h"));

        assertThat(onsets(performance))
                .containsExactly(
                        0L, 1_000_000L, 1_500_000L, 2_500_000L, 6_500_000L, 7_500_000L, 8_000_000L, 9_000_000L);
        assertThat(performance.settings().tempoAssumed()).isFalse();
    }

    @Test
    void written_tempo_changes_scale_with_the_chosen_tempo() {
        assertThat(onsets(at(120, Tunes.melody("2/4", "!tempo=60 C4 q, !tempo=120 D4 q | E4 h"))))
                .containsExactly(0L, 500_000L, 750_000L);
    }

    @Test
    void a_later_tempo_keeps_its_relation_to_an_assumed_start() {
        Tune tune = Tunes.melody("2/4", "C4 h | !tempo=120 D4 h");

        assertThat(onsets(Performer.perform(tune))).startsWith(0L, 1_250_000L, 2_250_000L);
        assertThat(onsets(at(48, tune))).containsExactly(0L, 2_500_000L);
        assertThat(at(48, tune).endMicros()).isEqualTo(4_500_000L);
    }

    @Test
    void a_repeat_goes_back_to_the_tempo_and_loudness_of_its_first_time() {
        Performance performance = at60("2/4", "!tempo=60 C4 h | @start D4 h | @end !tempo=120 !ff E4 h");

        assertThat(performance.measures())
                .extracting(PlayedMeasure::startMicros)
                .containsExactly(0L, 2_000_000L, 4_000_000L, 5_000_000L, 7_000_000L);
        assertThat(performance.treble()).extracting(TrebleMoment::loudness).containsExactly(400, 400, 600, 400, 600);
    }

    @Test
    void changes_of_meter_and_key_are_kept() {
        Performance performance = at60("2/4", "C4 h | @meter=3/4 @key=2 D4 h. | @meter=6/8 E4 h.");

        assertThat(performance.measures())
                .extracting(m -> performance.meterOf(m).toString())
                .containsExactly("2/4", "3/4", "6/8");
        assertThat(performance.measures())
                .extracting(PlayedMeasure::startMicros)
                .containsExactly(0L, 2_000_000L, 5_000_000L);
    }

    @Test
    void a_pickup_split_across_a_repeat_keeps_the_grid() {
        Performance performance = at60("2/4", "@start @pickup C4 e | D4 h | @end @pickup E4 q. | F4 h");

        assertThat(performance.measures())
                .extracting(PlayedMeasure::startMicros)
                .containsExactly(0L, 500_000L, 2_500_000L, 4_000_000L, 4_500_000L, 6_500_000L, 8_000_000L);
        assertThat(performance.measures()).extracting(PlayedMeasure::occurrence).containsExactly(1, 1, 1, 2, 2, 2, 1);
    }

    @Test
    void dal_segno_al_coda_in_seconds() {
        Performance performance = at60("1/4", "C4 q | @segno D4 q | @tocoda E4 q | @ds F4 q | @coda G4 q");

        assertThat(keys(performance))
                .containsExactly(
                        List.of(60), List.of(62), List.of(64), List.of(65), List.of(62), List.of(64), List.of(67));
        assertThat(performance.endMicros()).isEqualTo(7_000_000L);
    }

    @Test
    void hairpins_lead_from_mark_to_mark_in_hundredths() {
        Performance performance = at60("4/4", "!p !< C4 q, D4 q, E4 q, F4 q | !end !f G4 q, !> A4 q, B4 q, !end C5 q");

        assertThat(performance.treble())
                .extracting(TrebleMoment::loudness)
                .containsExactly(200, 275, 350, 425, 500, 500, 450, 400);
    }

    @Test
    void a_hairpin_over_a_barline_goes_on_evenly() {
        Performance performance = at60("2/4", "!mf C4 q, !< D4 q | E4 q, F4 q | G4 q, !end A4 q");

        assertThat(performance.treble())
                .extracting(TrebleMoment::loudness)
                .containsExactly(400, 400, 425, 450, 475, 500);
    }

    @Test
    void a_phrase_begins_at_its_mark_after_a_double_bar_and_at_the_start() {
        Performance performance = at60("2/4", "C4 q, !phrase D4 q | @double E4 h | R q, F4 q | G4 h");

        assertThat(performance.treble())
                .extracting(TrebleMoment::startsPhrase)
                .containsExactly(true, true, false, true, false);
    }

    @Test
    void chords_hold_until_the_next_and_are_cut_at_measures() {
        Performance performance = at60("2/4", "C4 h | \"C\" C4 q, \"G7\" D4 q | E4 h | \"N.C.\" R h");

        assertThat(performance.harmony())
                .extracting(span -> span.chord().map(Object::toString).orElse("none"))
                .containsExactly("none", "C", "G7", "G7", "N.C.");
        assertThat(performance.harmony())
                .extracting(HarmonySpan::startMicros)
                .containsExactly(0L, 2_000_000L, 3_000_000L, 4_000_000L, 6_000_000L);
    }

    @Test
    void going_back_a_measure_keeps_its_chord_and_only_a_pickup_without_one_lets_the_last_ring_on() {
        Performance performance =
                at60("2/4", "@pickup C4 q | \"C\" C4 h | @start E4 h | @end \"G7\" F4 h | @dc \"F\" A4 h");

        assertThat(performance.harmony())
                .extracting(span -> span.chord().map(Object::toString).orElse("none"))
                .containsExactly("none", "C", "C", "G7", "C", "G7", "F", "F", "C", "C", "G7", "C", "G7", "F");
    }

    private static List<String> chords(Tune tune, ChordsPlayed choice) {
        Settings settings =
                SettingsBuilder.of(tune).timesThrough(3).chords(choice).build();
        return Performer.perform(tune, settings).harmony().stream()
                .map(span -> span.chord().map(Object::toString).orElse("none"))
                .toList();
    }

    @Test
    void of_two_chords_at_one_place_later_passes_play_the_second_and_measures_after_it_go_on_with_it() {
        Tune tune = Tunes.melody("2/4", "\"C\" C4 h | \"G(Em)\" D4 h | E4 h");

        assertThat(chords(tune, ChordsPlayed.USUAL)).containsExactly("C", "G", "G", "C", "Em", "Em", "C", "Em", "Em");
        assertThat(chords(tune, new ChordsPlayed(ChordsPlayed.Alternates.NEVER, true)))
                .containsExactly("C", "G", "G", "C", "G", "G", "C", "G", "G");
        assertThat(chords(tune, new ChordsPlayed(ChordsPlayed.Alternates.ALWAYS, true)))
                .containsExactly("C", "Em", "Em", "C", "Em", "Em", "C", "Em", "Em");
    }

    @Test
    void a_repeat_inside_a_pass_plays_the_first_of_two_chords_again() {
        Tune tune = Tunes.melody("2/4", "@start \"G(Em)\" C4 h | @end D4 h | \"C\" E4 h | F4 h | G4 h");
        Settings once = SettingsBuilder.of(tune).timesThrough(1).build();

        assertThat(Performer.perform(tune, once).passes()).hasSize(1);
        assertThat(Performer.perform(tune, once).harmony())
                .extracting(span -> span.chord().orElseThrow().toString())
                .containsExactly("G", "G", "G", "G", "C", "C", "C");
    }

    @Test
    void where_chords_in_brackets_are_left_out_the_chord_before_goes_on() {
        Tune tune = Tunes.melody("2/4", "\"D\" C4 q, \"(A7)\" E4 q | F4 h | \"(G)(Em)\" D4 h");

        assertThat(chords(tune, ChordsPlayed.USUAL))
                .containsExactly("D", "A7", "A7", "G", "D", "A7", "A7", "Em", "D", "A7", "A7", "Em");
        assertThat(chords(tune, new ChordsPlayed(ChordsPlayed.Alternates.LATER_PASSES, false)))
                .containsExactly("D", "D", "D", "D", "D", "D", "D", "D", "D");
    }

    @Test
    void a_second_ending_goes_on_from_the_passage_before_the_first() {
        Performance performance =
                at60("2/4", "\"C\" !p C4 h | @ending1 @end @stop \"G7\" !ff D4 h | @ending2 @stop E4 h");

        assertThat(performance.harmony().get(3).chord()).map(Object::toString).contains("C");
        assertThat(performance.treble().get(3).loudness()).isEqualTo(200);
    }

    @Test
    void a_written_bass_staff_is_played_with_its_ties() {
        Tune tune = Tunes.in("2/4")
                .melody("C4 h | C4 h")
                .bass("C3 q, E3+G3+C3 q M | C3+E3+G3 q tie, R q")
                .tune();

        Performance performance = at(60, tune);

        assertThat(performance.bass()).extracting(BassMoment::releaseMicros).containsExactly(1_000_000L, 3_000_000L);
        assertThat(performance.bass().get(1).pitches()).hasSize(3);
    }

    @Test
    void measures_without_melody_are_played_in_silence() {
        Performance performance = at60("2/4", "R h | C4 h | R h");

        assertThat(performance.treble()).hasSize(1);
        assertThat(performance.endMicros()).isEqualTo(6_000_000L);
    }

    @Test
    void a_tune_without_a_note_is_refused() {
        assertThatThrownBy(() -> at60("2/4", "R h"))
                .isInstanceOf(TuneException.class)
                .hasMessage("the tune: it has no note to play");
    }

    @Test
    void lengths_that_cannot_be_added_exactly_are_refused() {
        String text = Stream.of(1000003, 1000033, 1000037, 1000039, 1000081)
                .map(prime -> "@pickup C4 1/" + prime)
                .collect(Collectors.joining(" | "));

        assertThatThrownBy(() -> at60("2/4", text))
                .isInstanceOf(TuneException.class)
                .hasMessage("the tune: it mixes note lengths that cannot be added exactly");
    }

    @Test
    void a_repeat_around_all_makes_two_passes_and_two_repeated_halves_make_one() {
        assertThat(at60("2/4", "C4 h | @end D4 h").passes())
                .containsExactly(new Pass(1, 1, 0, 1), new Pass(2, 1, 2, 3));
        assertThat(at60("2/4", "C4 h | @end D4 h | @start E4 h | @end F4 h").passes())
                .containsExactly(new Pass(1, 1, 0, 7));
    }

    @Test
    void each_time_through_begins_a_pass() {
        Tune tune = Tunes.melody("2/4", "C4 h | D4 h");
        Performance performance =
                Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(3).build());

        assertThat(performance.passes())
                .containsExactly(new Pass(1, 1, 0, 1), new Pass(2, 2, 2, 3), new Pass(3, 3, 4, 5));
        assertThat(performance.measures()).extracting(PlayedMeasure::occurrence).containsExactly(1, 1, 2, 2, 3, 3);
    }

    @Test
    void transposition_reaches_notes_chords_and_bass() {
        Tune tune = Tunes.in("2/4").melody("\"C\" C4 h").bass("C3 h").tune();
        Performance performance = Performer.perform(
                tune, SettingsBuilder.of(tune).transposition(2).build());

        assertThat(keys(performance).get(0)).containsExactly(62);
        assertThat(performance.harmony().get(0).chord()).map(Object::toString).contains("D");
        assertThat(performance.bass().get(0).pitches()).hasToString("[D3]");
    }
}
