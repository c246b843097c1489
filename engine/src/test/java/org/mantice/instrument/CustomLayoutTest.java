package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class CustomLayoutTest {
    private static final StradellaBass FULL = StradellaBass.ofSize(120);

    private static BassButton button(String name) {
        return ButtonNames.find(name).orElseThrow();
    }

    /** Encyclopaedia article on the system: in the Russian variant C diminished sits where F diminished sits elsewhere. */
    @Test
    void a_displaced_diminished_row_lays_c_in_the_place_of_f() {
        StradellaBass displaced = FULL.displaced(BassRow.DIMINISHED, -1);

        assertThat(displaced.alongMicrons(button("C diminished"))).isEqualTo(FULL.alongMicrons(button("F diminished")));
        assertThat(displaced.acrossMicrons(button("C diminished")))
                .isEqualTo(FULL.acrossMicrons(button("F diminished")));
        assertThat(displaced.place(button("C diminished"))).isEqualTo(-1);
        assertThat(displaced.place(button("C minor"))).isZero();
    }

    @Test
    void a_displaced_row_keeps_its_places_and_its_number_of_buttons() {
        StradellaBass displaced = FULL.displaced(BassRow.DIMINISHED, -1);

        assertThat(displaced.buttons()).isEqualTo(120);
        assertThat(displaced.laidOut().stream().mapToInt(displaced::place).distinct())
                .hasSize(20)
                .containsExactlyInAnyOrderElementsOf(
                        FULL.laidOut().stream().map(FULL::place).distinct().toList());
        assertThat(displaced.displaced(BassRow.DIMINISHED, 1)).isEqualTo(FULL);
    }

    @Test
    void a_displaced_row_sounds_what_its_buttons_are_called() {
        ButtonChoice choice = new ChordButtons(FULL.displaced(BassRow.DIMINISHED, -1))
                .choices(ChordLayouts.symbol("Ddim7"))
                .get(0);

        assertThat(choice).hasToString("D bass + D diminished");
    }

    @Test
    void rows_may_begin_and_end_where_they_like() {
        StradellaBass ragged = StradellaBass.ofRows(List.of(
                ButtonRow.of(BassRow.MINOR, -1, 3),
                ButtonRow.of(BassRow.BASS, -3, 8),
                ButtonRow.of(BassRow.MAJOR, -2, 5)));

        assertThat(ragged.buttons()).isEqualTo(16);
        assertThat(ragged.rows())
                .extracting(ButtonRow::row)
                .containsExactly(BassRow.BASS, BassRow.MAJOR, BassRow.MINOR);
        assertThat(ragged.has(button("D minor"))).isFalse();
        assertThat(ragged.has(button("G minor"))).isTrue();
        assertThat(ragged.has(button("E bass"))).isTrue();
        assertThat(ragged.has(button("E major"))).isFalse();
        assertThat(ragged.hasColumn(4)).isTrue();
        assertThat(ragged.hasColumn(5)).isFalse();
    }

    @Test
    void gaps_and_broken_buttons_play_nothing_and_only_gaps_are_not_there() {
        StradellaBass worn = FULL.with(
                FULL.singles().withBroken(Set.of(button("C seventh"))).withMissing(Set.of(button("A# diminished"))));

        assertThat(worn.buttons()).isEqualTo(119);
        assertThat(worn.laidOut()).hasSize(119).contains(button("C seventh")).doesNotContain(button("A# diminished"));
        assertThat(worn.allButtons()).hasSize(118).doesNotContain(button("C seventh"));
        assertThat(worn.buttons(BassRow.SEVENTH, 0)).isEmpty();
    }

    @Test
    void a_broken_button_is_passed_over_and_said() {
        StradellaBass worn = StradellaBass.ofSize(72)
                .with(StradellaBass.ofSize(72).singles().withBroken(Set.of(button("C seventh"), button("D bass"))));
        ChordButtons buttons = new ChordButtons(worn);

        ButtonChoice seventh = buttons.choices(ChordLayouts.symbol("C7")).get(0);
        assertThat(seventh.buttons()).allMatch(worn::has);
        assertThat(seventh.substitutions()).containsExactly(Substitution.BROKEN_BUTTON);
        assertThat(buttons.choices(ChordLayouts.symbol("D")).get(0)).hasToString("D counterbass + D major");
    }

    @Test
    void rows_close_up_where_the_instrument_lacks_one() {
        StradellaBass withoutMinor = StradellaBass.ofRows(12, EnumSet.of(BassRow.BASS, BassRow.MAJOR, BassRow.SEVENTH));

        assertThat(withoutMinor.acrossMicrons(button("C seventh")) - withoutMinor.acrossMicrons(button("C major")))
                .isEqualTo(ButtonGeometry.ESTIMATE.rowMicrons());
    }

    @Test
    void distances_are_exact_and_take_drift_stagger_and_single_rows_into_account() {
        ButtonGeometry regular = ButtonGeometry.estimate(17_000, 14_000, 8_000, 9_000);
        ButtonGeometry measured = new ButtonGeometry(
                17_000, 14_000, 8_000, 9_000, Map.of(BassRow.MAJOR, new ButtonGeometry.Offset(-1_000, 2_000)), true);
        StradellaBass grid = new StradellaBass(FULL.rows(), FULL.singles(), regular, FULL.sound());
        StradellaBass known = new StradellaBass(FULL.rows(), FULL.singles(), measured, FULL.sound());

        assertThat(grid.distanceSquared(button("C bass"), button("A bass"))).isEqualTo(51_000L * 51_000L);
        assertThat(grid.distanceSquared(button("C bass"), button("C major")))
                .isEqualTo(8_000L * 8_000L + 14_000L * 14_000L);
        assertThat(known.distanceSquared(button("C bass"), button("C major")))
                .isEqualTo(7_000L * 7_000L + 16_000L * 16_000L);
        assertThat(ButtonGeometry.ESTIMATE.measured()).isFalse();
    }

    /** Wikibooks, lesson 3: the counterbass of the C column lies diagonally down, between C and F. */
    @Test
    void the_counterbass_of_a_column_lies_between_its_bass_and_the_one_below() {
        assertThat(FULL.alongMicrons(button("E counterbass")))
                .isBetween(FULL.alongMicrons(button("F bass")), FULL.alongMicrons(button("C bass")));
        assertThat(FULL.alongMicrons(button("C major"))).isGreaterThan(FULL.alongMicrons(button("C bass")));
    }

    @Test
    void marks_are_the_instruments_own() {
        StradellaBass other = FULL.with(FULL.singles().withMarked(Set.of(button("D bass"))));

        assertThat(other.columnsToMark(0)).hasValue(2);
        assertThat(FULL.columnsToMark(2)).hasValue(2);
        assertThat(FULL.columnsToMark(3)).hasValue(1);
        assertThat(FULL.with(FULL.singles().withMarked(Set.of())).columnsToMark(0))
                .isEmpty();
    }

    @Test
    void what_cannot_be_is_refused_with_what_is_allowed() {
        assertThatThrownBy(() -> StradellaBass.ofRows(
                        List.of(ButtonRow.of(BassRow.BASS, 0, 2), ButtonRow.of(BassRow.BASS, 4, 2))))
                .hasMessage("rows is twice BASS; allowed: each kind once");
        assertThatThrownBy(() -> FULL.with(FULL.singles().withBroken(Set.of(new BassButton(BassRow.BASS, 12)))))
                .hasMessage("broken is B# bass; allowed: buttons of the rows");
        assertThatThrownBy(() -> new SingleButtons(
                        new TreeSet<>(Set.of(button("C bass"))),
                        new TreeSet<>(),
                        new TreeSet<>(Set.of(button("C bass")))))
                .hasMessage("marked is C bass; allowed: no button that is missing");
        assertThatThrownBy(() -> new ButtonRow(BassRow.BASS, 0, 2, 4)).hasMessage("shift is 4; allowed: -3 to 3");
        assertThatThrownBy(() -> new BassSound(11, 54, 4, 6)).hasMessage("lowestBassMidi is 11; allowed: 12 to 60");
    }
}
