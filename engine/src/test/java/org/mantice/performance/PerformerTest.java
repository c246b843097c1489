package org.mantice.performance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class PerformerTest {
    private static Performance at(int quarters, Tune tune) {
        return Performer.perform(
                tune, SettingsBuilder.of(tune).tempo(Tempo.quarters(quarters)).timesThrough(1).build());
    }

    private static Performance at60(String meter, String text) {
        return at(60, Tunes.melody(meter, text));
    }

    private static List<List<Integer>> keys(Performance performance) {
        return performance.treble().stream()
                .map(moment -> moment.notes().stream().map(note -> note.held() ? -note.midi() : note.midi()).toList())
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
}
