package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.tune.NoteName;

/**
 * O16 to O21 and O25. Sizes and roots: size tables of two accordion wikis; marked buttons: the encyclopaedia article on
 * the system.
 */
class StradellaLayoutTest {
    @ParameterizedTest(name = "{0} buttons: {1} columns, {2} rows, {3} to {4}")
    @CsvSource({
        "8, 4, 2, F, D", "12, 6, 2, Bb, A", "24, 8, 3, Eb, E", "32, 8, 4, Eb, E", "40, 8, 5, Eb, E",
        "48, 12, 4, Db, F#", "60, 12, 5, Db, F#", "72, 12, 6, Db, F#", "80, 16, 5, Cb, G#", "96, 16, 6, Cb, G#",
        "120, 20, 6, Bbb, A#"
    })
    void each_size_has_the_published_columns_rows_and_roots(
            int buttons, int columns, int rows, String first, String last) {
        StradellaBass bass = StradellaBass.ofSize(buttons);

        assertThat(bass.buttons()).isEqualTo(buttons);
        assertThat(bass.rows()).hasSize(rows).extracting(ButtonRow::row).contains(BassRow.BASS, BassRow.MAJOR);
        assertThat(bass.rows()).allSatisfy(row -> {
            assertThat(row.columns()).isEqualTo(columns);
            assertThat(row.firstColumn()).isEqualTo(1 - columns / 2);
            assertThat(row.lastColumn()).isEqualTo(columns / 2);
            assertThat(NoteName.ofFifths(row.firstColumn())).hasToString(first);
            assertThat(NoteName.ofFifths(row.lastColumn())).hasToString(last);
        });
        assertThat(bass.allButtons()).hasSize(buttons).doesNotHaveDuplicates().allMatch(bass::has);
    }

    @ParameterizedTest(name = "{0} buttons lack {1}")
    @CsvSource({
        "8, COUNTERBASS MINOR SEVENTH DIMINISHED",
        "12, COUNTERBASS MINOR SEVENTH DIMINISHED",
        "24, COUNTERBASS SEVENTH DIMINISHED",
        "32, COUNTERBASS DIMINISHED",
        "40, DIMINISHED",
        "48, SEVENTH DIMINISHED",
        "60, DIMINISHED",
        "72, ''",
        "80, DIMINISHED",
        "96, ''",
        "120, ''"
    })
    void each_size_lacks_the_published_rows(int buttons, String lacking) {
        EnumSet<BassRow> rows = EnumSet.allOf(BassRow.class);
        for (String row : lacking.split(" ")) if (!row.isEmpty()) rows.remove(BassRow.valueOf(row));

        assertThat(StradellaBass.ofSize(buttons).rows())
                .extracting(ButtonRow::row)
                .containsExactlyElementsOf(rows);
    }

    @Test
    void the_other_48_has_eight_columns_of_six_rows() {
        StradellaBass bass = StradellaBass.ofRows(8, EnumSet.allOf(BassRow.class));

        assertThat(bass.buttons()).isEqualTo(48);
        assertThat(bass.rows()).allSatisfy(row -> {
            assertThat(NoteName.ofFifths(row.firstColumn())).hasToString("Eb");
            assertThat(NoteName.ofFifths(row.lastColumn())).hasToString("E");
        });
    }

    @Test
    void the_roots_of_a_120_come_in_the_published_order() {
        StradellaBass bass = StradellaBass.ofSize(120);

        assertThat(bass.allButtons().stream()
                        .filter(button -> button.row() == BassRow.BASS)
                        .map(button -> button.noteName().toString()))
                .containsExactly("Bbb Fb Cb Gb Db Ab Eb Bb F C G D A E B F# C# G# D# A#".split(" "));
    }

    @Test
    void a_120_repeats_eight_columns() {
        StradellaBass bass = StradellaBass.ofSize(120);

        assertThat(IntStream.range(0, 12)
                        .filter(root -> bass.buttons(BassRow.MAJOR, root).size() == 2))
                .hasSize(8);
        assertThat(bass.buttons(BassRow.MAJOR, 9))
                .containsExactly(new BassButton(BassRow.MAJOR, -9), new BassButton(BassRow.MAJOR, 3));
    }

    @Test
    void makers_mark_c_e_and_a_flat_of_the_bass_row() {
        assertThat(StradellaBass.ofSize(120).singles().marked())
                .extracting(BassButton::toString)
                .containsExactly("Ab bass", "C bass", "E bass");
        assertThat(StradellaBass.ofSize(120).markedPlaces()).containsExactly(-4, 0, 4);
        assertThat(StradellaBass.ofSize(12).markedPlaces()).containsExactly(0);
    }

    /** R. Stradling, Notes on the Stradella bass. */
    @Test
    void chord_buttons_on_c_sound_three_tones() {
        assertThat(new BassButton(BassRow.MAJOR, 0).pitchClasses()).containsExactly(0, 4, 7);
        assertThat(new BassButton(BassRow.MINOR, 0).pitchClasses()).containsExactly(0, 3, 7);
        assertThat(new BassButton(BassRow.SEVENTH, 0).pitchClasses()).containsExactly(0, 4, 10);
        assertThat(new BassButton(BassRow.DIMINISHED, 0).pitchClasses()).containsExactly(0, 3, 9);
    }

    @Test
    void a_counterbass_sounds_the_root_four_columns_up() {
        for (int column = -10; column <= 10; column++)
            assertThat(new BassButton(BassRow.COUNTERBASS, column).pitchClasses())
                    .isEqualTo(new BassButton(BassRow.BASS, column + 4).pitchClasses());
        assertThat(new BassButton(BassRow.COUNTERBASS, 0).noteName()).hasToString("E");
    }

    /** O21. German encyclopaedia article on the system: true wherever the octave of the basses breaks. */
    @Test
    void exactly_four_counterbasses_lie_below_their_root_in_any_octave() {
        for (int lowest = 36; lowest < 48; lowest++) {
            BassSound sound = new BassSound(lowest, 54, 4, 6);
            int below = 0;
            for (int column = 0; column < 12; column++)
                if (sound.midi(new BassButton(BassRow.COUNTERBASS, column)).get(0)
                        < sound.midi(new BassButton(BassRow.BASS, column)).get(0)) below++;
            assertThat(below).isEqualTo(4);
        }
    }

    /** Notated ranges: basses in the great octave, chords from small e-flat to f1 (German encyclopaedia article). */
    @Test
    void every_button_sounds_within_one_octave_of_the_published_range() {
        StradellaBass bass = StradellaBass.ofSize(120);
        for (BassButton button : bass.allButtons()) {
            List<Integer> notes = bass.sound().midi(button);

            assertThat(notes).hasSameSizeAs(button.row().intervals()).isSorted();
            assertThat(notes.stream().map(midi -> midi % 12))
                    .containsExactlyInAnyOrderElementsOf(button.pitchClasses());
            if (button.row().isChord())
                assertThat(notes).allSatisfy(midi -> assertThat(midi).isBetween(51, 65));
            else assertThat(notes).allSatisfy(midi -> assertThat(midi).isBetween(36, 47));
        }
        assertThat(bass.sound().midi(new BassButton(BassRow.MAJOR, 0))).containsExactly(55, 60, 64);
    }

    @Test
    void the_chords_of_a_key_lie_side_by_side() {
        int[] degreesInSemitones = {5, 0, 7, 2, 9};
        for (int tonic = -4; tonic <= 4; tonic++)
            for (int i = 0; i < degreesInSemitones.length; i++)
                assertThat(new BassButton(BassRow.BASS, tonic - 1 + i).rootPitchClass())
                        .isEqualTo(Math.floorMod(7 * tonic + degreesInSemitones[i], 12));
    }

    @Test
    void a_bass_note_is_found_in_both_rows() {
        assertThat(StradellaBass.ofSize(48).bassButtons(9))
                .containsExactly(new BassButton(BassRow.BASS, 3), new BassButton(BassRow.COUNTERBASS, -1));
        assertThat(StradellaBass.ofSize(12).bassButtons(9)).containsExactly(new BassButton(BassRow.BASS, 3));
        assertThat(StradellaBass.ofSize(8).bassButtons(9)).isEmpty();
    }

    @Test
    void every_natural_bass_note_of_a_120_can_be_reached_twice() {
        for (int pitchClass : List.of(0, 2, 4, 5, 7, 9, 11))
            assertThat(StradellaBass.ofSize(120).bassButtons(pitchClass)).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void a_size_that_is_not_made_is_refused_with_those_that_are() {
        assertThatThrownBy(() -> StradellaBass.ofSize(36))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("buttons is 36; allowed: one of [8, 12, 24, 32, 40, 48, 60, 72, 80, 96, 120]");
        assertThatThrownBy(() -> StradellaBass.ofRows(7, Set.of(BassRow.BASS)))
                .hasMessage("columns is 7; allowed: even, 2 to 24");
    }

    @Test
    void no_bass_has_no_buttons() {
        assertThat(StradellaBass.none().isAbsent()).isTrue();
        assertThat(StradellaBass.none().allButtons()).isEmpty();
        assertThat(new TreeSet<>(StradellaBass.none().bassButtons(0))).isEmpty();
    }
}
