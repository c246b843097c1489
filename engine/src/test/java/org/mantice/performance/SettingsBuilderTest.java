package org.mantice.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.mantice.pattern.Accompaniment;
import org.mantice.tune.Loudness;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class SettingsBuilderTest {
    private static String tempo(String meter, String dance, String title) {
        Tunes tunes = Tunes.in(meter).title(title).melody("C4 1/64");
        return SettingsBuilder.assumed((dance.isEmpty() ? tunes : tunes.dance(dance)).tune())
                .tempo()
                .toString();
    }

    @Test
    void what_is_not_written_is_assumed_and_said_to_be() {
        Settings settings = SettingsBuilder.assumed(Tunes.melody("3/4", "C4 h."));

        assertThat(settings)
                .isEqualTo(new Settings(
                        Tempo.quarters(132),
                        true,
                        2,
                        true,
                        Loudness.MF,
                        true,
                        0,
                        ChordsPlayed.USUAL,
                        Accompaniment.NONE));
    }

    @Test
    void what_is_written_is_not_assumed() {
        Settings settings =
                SettingsBuilder.assumed(Tunes.melody("3/4", "@pickup R q | R q, !tempo=70 !p C4 h | @end C4 h."));

        assertThat(settings.tempo()).isEqualTo(Tempo.quarters(70));
        assertThat(settings.tempoAssumed()).isFalse();
        assertThat(settings.loudnessAssumed()).isFalse();
        assertThat(settings.timesThrough()).isEqualTo(1);
    }

    @Test
    void marks_after_the_first_note_say_nothing_of_the_start() {
        Settings settings = SettingsBuilder.assumed(Tunes.melody("3/4", "C4 q, !tempo=70 !p C4 h"));

        assertThat(settings.tempoAssumed()).isTrue();
        assertThat(settings.loudnessAssumed()).isTrue();
    }

    @Test
    void what_the_player_chooses_is_not_assumed() {
        Tune tune = Tunes.melody("6/8", "C4 h.");
        Settings settings = SettingsBuilder.of(tune)
                .beatsPerMinute(100)
                .timesThrough(3)
                .loudness(Loudness.P)
                .transposition(-2)
                .build();

        assertThat(settings.tempo()).hasToString("3/8=100");
        assertThat(settings)
                .isEqualTo(new Settings(
                        settings.tempo(),
                        false,
                        3,
                        false,
                        Loudness.P,
                        false,
                        -2,
                        ChordsPlayed.USUAL,
                        Accompaniment.NONE));
    }

    @Test
    void the_dance_sets_the_tempo_by_meter() {
        assertThat(tempo("3/4", "waltz", "")).isEqualTo("1/4=156");
        assertThat(tempo("3/4", "musette waltz", "")).isEqualTo("1/4=186");
        assertThat(tempo("2/4", "polka", "")).isEqualTo("1/4=108");
        assertThat(tempo("6/8", "jig", "")).isEqualTo("3/8=116");
        assertThat(tempo("9/8", "slip jig", "")).isEqualTo("3/8=116");
        assertThat(tempo("4/4", "", "The Miller's Slow Air")).isEqualTo("1/4=60");
        assertThat(tempo("3/4", "", "Valse de la lune")).isEqualTo("1/4=156");
        assertThat(tempo("4/4", "", "Swingler's Farewell")).isEqualTo("1/4=112");
        assertThat(tempo("2/2", "", "")).isEqualTo("1/2=88");
        assertThat(tempo("5/8", "", "")).isEqualTo("1/8=200");
        assertThat(tempo("free", "", "")).isEqualTo("1/4=80");
    }

    @Test
    void a_tune_repeated_as_a_whole_is_played_once_through() {
        assertThat(SettingsBuilder.assumed(Tunes.melody("2/4", "C4 h | @end D4 h"))
                        .timesThrough())
                .isEqualTo(1);
        assertThat(SettingsBuilder.assumed(Tunes.melody("2/4", "C4 h | @end D4 h | E4 h | @end F4 h"))
                        .timesThrough())
                .isEqualTo(2);
    }

    @Test
    void a_tempo_out_of_range_is_refused() {
        assertThatThrownBy(() -> SettingsBuilder.of(Tunes.melody("2/4", "C4 h")).beatsPerMinute(4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("tempo is 4 beats a minute; allowed: 5 to 1000");
    }
}
