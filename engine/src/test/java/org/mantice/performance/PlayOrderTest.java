package org.mantice.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class PlayOrderTest {
    /** One word for each measure: its signs joined by {@code ;}, or {@code -}. */
    private static Tune tune(String measures) {
        String text = Stream.of(measures.trim().split("\\s+"))
                .map(word -> (word.equals("-") ? "" : "@" + word.replace(";", " @")) + " C4 w")
                .collect(Collectors.joining(" | "));
        return Tunes.melody("4/4", text);
    }

    /** Numbers of the measures from 1, in order of play. */
    private static String order(String measures) {
        return PlayOrder.of(tune(measures)).stream()
                .map(index -> String.valueOf(index + 1))
                .collect(Collectors.joining(" "));
    }

    @Test
    void without_signs_measures_follow_each_other() {
        assertThat(order("- - -")).isEqualTo("1 2 3");
    }

    @Test
    void a_repeat_without_a_start_goes_to_the_beginning() {
        assertThat(order("- end -")).isEqualTo("1 2 1 2 3");
        assertThat(order("end5 -")).isEqualTo("1 1 1 1 1 2");
    }

    @Test
    void a_repeat_goes_back_to_its_start() {
        assertThat(order("- start end -")).isEqualTo("1 2 3 2 3 4");
        assertThat(order("start;end -")).isEqualTo("1 1 2");
    }

    @Test
    void a_second_repeat_without_a_start_goes_to_the_end_of_the_first() {
        assertThat(order("- end - end -")).isEqualTo("1 2 1 2 3 4 3 4 5");
    }

    @Test
    void repeats_follow_each_other() {
        assertThat(order("start end start end3")).isEqualTo("1 2 1 2 3 4 3 4 3 4");
    }

    @Test
    void a_repeat_inside_a_repeat_is_played_in_full_each_time() {
        assertThat(order("start start;end3 end")).isEqualTo("1 2 2 2 3 1 2 2 2 3");
    }

    @Test
    void a_start_that_is_never_closed_is_passed_over() {
        assertThat(order("- start")).isEqualTo("1 2");
        assertThat(order("end start start end")).isEqualTo("1 1 2 3 4 3 4");
    }

    @Test
    void two_endings() {
        assertThat(order("- ending1;end;stop ending2;stop -")).isEqualTo("1 2 1 3 4");
        assertThat(order("- start - ending1;end;stop ending2;stop -")).isEqualTo("1 2 3 4 2 3 5 6");
    }

    @Test
    void a_second_ending_without_a_bracket() {
        assertThat(order("- ending1;end;stop - -")).isEqualTo("1 2 1 3 4");
        assertThat(order("- ending1+2;end;stop - -")).isEqualTo("1 2 1 2 1 3 4");
    }

    @Test
    void a_single_ending_at_the_end_is_played_each_time() {
        assertThat(order("- ending1;end;stop")).isEqualTo("1 2 1 2");
    }

    @Test
    void a_first_ending_whose_repeat_was_forgotten_still_returns() {
        assertThat(order("- ending1;stop ending2;stop -")).isEqualTo("1 2 1 3 4");
    }

    @Test
    void a_last_ending_closed_by_a_repeat_is_not_played_again() {
        assertThat(order("- ending1;end;stop ending2;end;stop -")).isEqualTo("1 2 1 3 4");
    }

    @Test
    void endings_that_skip_a_number_are_taken_in_order() {
        assertThat(order("- ending1;end;stop ending3;stop -")).isEqualTo("1 2 1 3 4");
        assertThat(order("- ending1;end;stop ending100000;stop -")).isEqualTo("1 2 1 3 4");
    }

    @Test
    void an_ending_reaches_to_the_repeat_before_the_next_one() {
        assertThat(order("- ending1;stop end ending2;stop -")).isEqualTo("1 2 3 1 4 5");
    }

    @Test
    void the_endings_of_two_parts_are_counted_apart() {
        assertThat(order("- ending1;end;stop ending2;stop start ending1;end;stop ending2;stop"))
                .isEqualTo("1 2 1 3 4 5 4 6");
    }

    /** As the written description of test 45d of the public MusicXML test suite tells it. */
    @Test
    void eight_times_through_five_endings() {
        assertThat(order("- ending1;end;stop ending2 - end;stop ending3+5+7 - - end;stop ending4+6;end;stop"
                        + " ending8;stop -"))
                .isEqualTo("1 2 1 3 4 5 1 6 7 8 9 1 10 1 6 7 8 9 1 10 1 6 7 8 9 1 11 12");
    }

    /** As the written description of test 45i of the public MusicXML test suite tells it. */
    @Test
    void repeats_inside_endings() {
        assertThat(order("- ending1 start;end end;stop ending2;start;end stop -"))
                .isEqualTo("1 2 3 3 4 1 5 5 6 7");
    }

    /** As the written description of test 45e of the public MusicXML test suite tells it. */
    @Test
    void a_repeat_that_begins_in_a_second_ending() {
        assertThat(order("- ending1;end;stop ending2;stop - start;end start ending1;end;stop ending2;start;stop end -"))
                .isEqualTo("1 2 1 3 4 5 5 6 7 6 8 9 8 9 10");
    }

    /** Bars 1 to 5 of test 45f of the public MusicXML test suite, which make no sense: every bar is played, and it ends. */
    @Test
    void contradictory_endings_are_forgiven() {
        assertThat(order("- ending1+2+3;stop ending2 end;stop -")).isEqualTo("1 2 1 3 4 1 2 5");
    }

    @Test
    void da_capo_al_fine() {
        assertThat(order("- fine - dc")).isEqualTo("1 2 3 4 1 2");
    }

    @Test
    void dal_segno_al_coda() {
        assertThat(order("- segno tocoda ds coda -")).isEqualTo("1 2 3 4 2 3 5 6");
    }

    @Test
    void da_capo_al_coda() {
        assertThat(order("- tocoda - dc coda")).isEqualTo("1 2 3 4 1 2 5");
    }

    @Test
    void the_first_time_fine_and_to_coda_are_passed() {
        assertThat(order("fine tocoda coda")).isEqualTo("1 2 3");
    }

    @Test
    void a_sign_that_leads_nowhere_is_passed_over() {
        assertThat(order("- tocoda ds -")).isEqualTo("1 2 3 1 2 3 4");
    }

    @Test
    void a_coda_sign_at_the_place_of_leaving_does_not_trap_the_player() {
        assertThat(order("segno coda;tocoda ds coda -")).isEqualTo("1 2 3 1 2 4 5");
    }

    @Test
    void repeats_are_taken_again_after_a_jump_unless_they_say_otherwise() {
        assertThat(order("- end fine dc")).isEqualTo("1 2 1 2 3 4 1 2 1 2 3");
        assertThat(order("- end;nojump fine dc")).isEqualTo("1 2 1 2 3 4 1 2 3");
    }

    @Test
    void a_repeat_is_finished_before_a_jump_and_a_fine_at_its_end() {
        assertThat(order("start;end;fine start;end;dc")).isEqualTo("1 1 2 2 1 1");
    }

    @Test
    void after_a_jump_without_repeats_the_last_ending_is_due() {
        assertThat(order("- ending1;end;stop;nojump ending2;stop fine dc")).isEqualTo("1 2 1 3 4 5 1 3 4");
    }

    @Test
    void a_first_ending_that_jumps_leads_to_the_second() {
        assertThat(order("- ending1;dc;stop ending2;stop")).isEqualTo("1 2 1 3");
    }

    @Test
    void two_jumps_are_taken_once_each() {
        assertThat(order("segno ds - dc -")).isEqualTo("1 2 1 2 3 4 1 2 3 4 5");
    }

    @Test
    void the_last_segno_before_the_jump_counts() {
        assertThat(order("segno - segno ds")).isEqualTo("1 2 3 4 3 4");
    }

    @Test
    void a_tune_that_grows_too_long_is_refused_at_once() {
        String nested = "start ".repeat(10) + "end100 ".repeat(10);

        assertThatThrownBy(() -> order(nested))
                .isInstanceOf(TuneException.class)
                .hasMessage("the tune: with its repeats it has more than 20000 measures; allowed: up to that many");
    }

    @Test
    void any_heap_of_signs_ends() {
        List<String> words = List.of(
                "start",
                "end",
                "end3",
                "ending1",
                "ending2",
                "ending1+3",
                "stop",
                "segno",
                "coda",
                "tocoda",
                "dc",
                "ds",
                "fine",
                "nojump",
                "double");
        Random random = new Random(45);
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            for (int i = 0; i < 20_000; i++) {
                List<String> measures = new ArrayList<>();
                for (int m = 0; m < 1 + random.nextInt(12); m++) {
                    List<String> signs = new ArrayList<>();
                    for (int s = random.nextInt(4); s > 0; s--) signs.add(words.get(random.nextInt(words.size())));
                    measures.add(signs.isEmpty() ? "-" : String.join(";", signs));
                }
                Tune tune = tune(String.join(" ", measures));

                assertThat(PlayOrder.of(tune))
                        .isNotEmpty()
                        .allMatch(index -> index < tune.measures().size());
            }
        });
    }
}
