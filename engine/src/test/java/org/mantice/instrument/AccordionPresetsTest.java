package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccordionPresetsTest {
    @ParameterizedTest(name = "{0}: {1} keys, MIDI {2} to {3}")
    @CsvSource({
        // Sources: 41 keys, question-and-answer page askvity and harmonika.ba; 45 keys, several places; others from
        // memory
        "beginner-26-key-8-bass, 26, 59, 84, 16, 8",
        "student-26-key-32-bass, 26, 59, 84, 16, 32",
        "student-26-key-40-bass, 26, 59, 84, 16, 40",
        "full-41-key-120-bass-moved-diminished, 41, 53, 93, 24, 120",
        "beginner-26-key-12-bass, 26, 59, 84, 16, 12",
        "student-26-key-24-bass, 26, 59, 84, 16, 24",
        "student-26-key-48-bass, 26, 59, 84, 16, 48",
        "student-30-key-48-bass-six-rows, 30, 55, 84, 18, 48",
        "standard-34-key-60-bass, 34, 55, 88, 20, 60",
        "standard-34-key-72-bass, 34, 55, 88, 20, 72",
        "worn-37-key-80-bass, 37, 53, 89, 22, 80",
        "standard-37-key-96-bass, 37, 53, 89, 22, 96",
        "musette-41-key-120-bass, 41, 53, 93, 24, 120",
        "full-41-key-120-bass, 41, 53, 93, 24, 120",
        "concert-45-key-120-bass, 45, 52, 96, 27, 120"
    })
    void each_preset_has_the_keys_of_its_size(String id, int keys, int lowest, int highest, int white, int buttons) {
        Accordion accordion = AccordionPresets.get(id);

        assertThat(accordion.treble().keys()).isEqualTo(keys);
        assertThat(accordion.treble().lowestMidi()).isEqualTo(lowest);
        assertThat(accordion.treble().highestMidi()).isEqualTo(highest);
        assertThat(accordion.treble().whiteKeys()).isEqualTo(white);
        assertThat(accordion.bass().buttons()).isEqualTo(buttons);
        assertThat(AccordionPresets.all())
                .hasSize(15)
                .extracting(Accordion::id)
                .contains(id)
                .doesNotHaveDuplicates();
    }

    /**
     * Sources: makers' and sellers' pages give 19.25 in (489 mm) for the 24 white keys of a full-size keyboard; players
     * measured white keys of 19.6 to 20.5 mm.
     */
    @Test
    void an_octave_of_a_full_size_keyboard_measures_142_6_mm() {
        assertThat(AccordionPresets.get("full-41-key-120-bass").treble().octaveMicrons() / 1_000.0)
                .isCloseTo(142.6, within(0.05));
        assertThat(AccordionPresets.all())
                .allSatisfy(accordion ->
                        assertThat(accordion.treble().whiteKeyMicrons()).isBetween(19_600, 20_500));
    }

    @Test
    void every_bellows_is_labelled_an_estimate_and_lies_within_it() {
        assertThat(AccordionPresets.all()).extracting(Accordion::bellows).allSatisfy(bellows -> {
            assertThat(bellows.measured()).isFalse();
            assertThat(bellows.turnMillis()).isBetween(30, 80);
            assertThat(bellows.fullMillilitres()).isBetween(5_000, 30_000);
            assertThat(bellows.comfortableMillilitres()).isLessThan(bellows.fullMillilitres());
        });
    }

    @Test
    void a_wedge_gives_more_air_in_its_second_half() {
        for (Accordion accordion : AccordionPresets.all()) {
            Bellows bellows = accordion.bellows();
            int half = bellows.millilitresAt(bellows.fullOpeningMm() / 2);
            assertThat(bellows.fullMillilitres() - half).isGreaterThan(half);
        }
    }

    @Test
    void capacity_is_the_comfortable_air_over_the_flow_of_one_reed() {
        Bellows bellows = AccordionPresets.get("full-41-key-120-bass").bellows();

        double seconds = bellows.comfortableMillilitres() / 1_000.0 / ReedFlow.litresPerSecond(500, 10);
        assertThat(bellows.capacityReedSeconds()).isCloseTo((int) Math.round(seconds), within(1));
    }

    @Test
    void larger_instruments_hold_more_air() {
        List<Integer> capacities = List.of(
                        "beginner-26-key-12-bass",
                        "student-26-key-48-bass",
                        "standard-34-key-72-bass",
                        "standard-37-key-96-bass",
                        "full-41-key-120-bass",
                        "concert-45-key-120-bass")
                .stream()
                .map(id -> AccordionPresets.get(id).bellows().capacityReedSeconds())
                .toList();

        assertThat(capacities).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void small_instruments_have_few_switches_and_large_ones_many() {
        assertThat(AccordionPresets.get("beginner-26-key-12-bass").treble().switches())
                .hasSize(1);
        assertThat(AccordionPresets.get("student-26-key-48-bass").treble().switches())
                .hasSize(3);
        assertThat(AccordionPresets.get("full-41-key-120-bass").treble().switches())
                .hasSize(11);
        assertThat(AccordionPresets.get("concert-45-key-120-bass").treble().switches())
                .hasSize(13);
    }

    /** n ranks give at most 2^n - 1 combinations. */
    @Test
    void no_two_switches_of_an_instrument_select_the_same_banks() {
        for (Accordion accordion : AccordionPresets.all()) {
            List<RegisterSwitch> switches = accordion.treble().switches();
            assertThat(switches).extracting(RegisterSwitch::banks).doesNotHaveDuplicates();
            long ranks = switches.stream()
                    .flatMap(one -> one.banks().stream())
                    .distinct()
                    .count();
            assertThat(switches).hasSizeLessThanOrEqualTo((1 << ranks) - 1);
        }
    }

    @Test
    void the_master_of_four_ranks_sounds_four_reeds_under_the_master_sign() {
        TrebleKeyboard treble = AccordionPresets.get("full-41-key-120-bass").treble();
        RegisterSwitch master = treble.findSwitch("master").orElseThrow();

        assertThat(master.reedsPerKey()).isEqualTo(4);
        assertThat(master.sign()).isEqualTo(RegisterSign.MASTER);
    }

    @Test
    void an_unknown_preset_is_refused_with_those_that_there_are() {
        assertThat(AccordionPresets.find("huge")).isEmpty();
        assertThatThrownBy(() -> AccordionPresets.get("huge"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("accordion preset is 'huge'; allowed: beginner-26-key-8-bass, ");
    }
}
