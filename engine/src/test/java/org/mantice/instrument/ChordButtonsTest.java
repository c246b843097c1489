package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.tune.ChordDegree;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import org.mantice.tune.Step;

class ChordButtonsTest {
    private static final NoteName C = new NoteName(Step.C, 0);

    private static ChordSymbol symbol(String root, ChordKind kind) {
        return ChordSymbol.of(name(root), kind);
    }

    private static ChordSymbol slash(String root, ChordKind kind, String bass) {
        return new ChordSymbol(name(root), kind, List.of(), Optional.of(name(bass)), "");
    }

    private static NoteName name(String text) {
        int alter = text.endsWith("#") ? 1 : text.endsWith("b") ? -1 : 0;
        return new NoteName(Step.valueOf(text.substring(0, 1)), alter);
    }

    private static List<ButtonChoice> choices(int size, ChordSymbol symbol) {
        return new ChordButtons(StradellaBass.ofSize(size)).choices(symbol);
    }

    private static ButtonChoice first(int size, ChordSymbol symbol) {
        return choices(size, symbol).get(0);
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "C, MAJOR, C bass + C major",
        "G, MINOR, G bass + G minor",
        "C, DOMINANT, C bass + C seventh",
        "D, DIMINISHED, D bass + D diminished",
        "D, DIMINISHED_SEVENTH, D bass + D diminished",
        "C, MAJOR_SIXTH, C bass + A minor",
        "C, MAJOR_SEVENTH, C bass + E minor",
        "E, MINOR_SEVENTH, E bass + G major",
        "B, HALF_DIMINISHED, B bass + D minor",
        "C, DOMINANT_NINTH, C bass + G minor + C seventh",
        "C, SUSPENDED_FOURTH, C bass + F bass + G bass",
        "C, SUSPENDED_SECOND, C bass + G bass + D bass",
        "C, POWER, C bass + G bass",
        "F, PEDAL, F bass"
    })
    void a_120_takes_the_custom_buttons(String root, ChordKind kind, String buttons) {
        assertThat(first(120, symbol(root, kind))).hasToString(buttons);
        assertThat(first(120, symbol(root, kind)).missing()).isEmpty();
        assertThat(first(120, symbol(root, kind)).substitutions()).isEmpty();
    }

    /** German encyclopedia article: Am7 is A bass, as root or as counterbass of F, with C major. */
    @Test
    void a_minor_seventh_is_a_bass_with_c_major() {
        List<ButtonChoice> choices = choices(120, symbol("A", ChordKind.MINOR_SEVENTH));

        assertThat(choices).extracting(ButtonChoice::toString).contains("A bass + C major", "A counterbass + C major");
        assertThat(choices.get(0).sounding()).containsExactly(0, 4, 7, 9);
        assertThat(choices.get(0).foreign()).isEmpty();
        assertThat(choices.get(1).bass()).contains(new BassButton(BassRow.COUNTERBASS, -1));
    }

    /** German encyclopedia article: Fm6 is F minor with F diminished. */
    @Test
    void f_minor_sixth_is_f_minor_with_f_diminished() {
        ButtonChoice choice = first(120, symbol("F", ChordKind.MINOR_SIXTH));

        assertThat(choice.chord())
                .containsExactly(new BassButton(BassRow.MINOR, -1), new BassButton(BassRow.DIMINISHED, -1));
        assertThat(choice.sounding()).containsExactly(0, 2, 5, 8);
        assertThat(choice.missing()).isEmpty();
        assertThat(choice.foreign()).isEmpty();
    }

    /** Layout of the 48: no seventh row. */
    @Test
    void a_48_plays_g_seventh_as_g_major_and_says_so() {
        ButtonChoice choice = first(48, symbol("G", ChordKind.DOMINANT));

        assertThat(choice).hasToString("G bass + G major");
        assertThat(choice.missing()).containsExactly(5);
        assertThat(choice.substitutions()).containsExactly(Substitution.NO_SEVENTH_ROW);
    }

    @Test
    void a_seventh_button_is_complete_without_the_fifth() {
        ButtonChoice choice = first(120, symbol("C", ChordKind.DOMINANT));

        assertThat(choice.missing()).isEmpty();
        assertThat(choice.leftOut()).containsExactly(7);
        assertThat(choice.foreign()).isEmpty();
    }

    @Test
    void a_diminished_triad_states_the_sixth_that_its_button_adds() {
        ButtonChoice choice = first(72, symbol("C", ChordKind.DIMINISHED));

        assertThat(choice.missing()).isEmpty();
        assertThat(choice.leftOut()).containsExactly(6);
        assertThat(choice.foreign()).containsExactly(9);
    }

    @Test
    void without_a_diminished_row_the_minor_chord_a_third_up_covers_the_triad() {
        ButtonChoice choice = first(80, symbol("C", ChordKind.DIMINISHED));

        assertThat(choice).hasToString("C bass + Eb minor");
        assertThat(choice.missing()).isEmpty();
        assertThat(choice.foreign()).containsExactly(10);
        assertThat(choice.substitutions()).containsExactly(Substitution.NO_DIMINISHED_ROW);
    }

    @Test
    void a_minor_chord_without_a_minor_row_is_an_open_fifth() {
        ButtonChoice choice = first(12, symbol("C", ChordKind.MINOR));

        assertThat(choice).hasToString("C bass + G bass");
        assertThat(choice.missing()).containsExactly(3);
        assertThat(choice.foreign()).isEmpty();
        assertThat(choice.substitutions()).containsExactly(Substitution.NO_MINOR_ROW);
    }

    @Test
    void a_suspended_chord_as_major_states_the_clash() {
        assertThat(choices(120, symbol("C", ChordKind.SUSPENDED_FOURTH))).anySatisfy(choice -> {
            assertThat(choice).hasToString("C bass + C major");
            assertThat(choice.missing()).containsExactly(5);
            assertThat(choice.foreign()).containsExactly(4);
        });
    }

    @Test
    void a_slash_bass_is_the_nearer_of_bass_and_counterbass() {
        assertThat(first(120, slash("C", ChordKind.MAJOR, "E")).bass())
                .contains(new BassButton(BassRow.COUNTERBASS, 0));
        assertThat(first(120, slash("C", ChordKind.MAJOR, "G")).bass()).contains(new BassButton(BassRow.BASS, 1));
        assertThat(first(120, slash("D", ChordKind.MAJOR, "F#")).bass())
                .contains(new BassButton(BassRow.COUNTERBASS, 2));
    }

    @Test
    void a_slash_bass_that_is_not_there_becomes_the_fundamental() {
        ButtonChoice choice = first(12, slash("C", ChordKind.MAJOR, "E"));

        assertThat(choice).hasToString("C bass + C major");
        assertThat(choice.hasWrittenBass()).isFalse();
        assertThat(choice.substitutions()).containsExactly(Substitution.NO_COUNTERBASS_ROW, Substitution.OTHER_BASS);
    }

    @Test
    void a_slash_bass_costs_no_tone_of_a_combination() {
        ButtonChoice choice = first(120, slash("A", ChordKind.MINOR_SEVENTH, "C"));

        assertThat(choice.bass()).contains(new BassButton(BassRow.BASS, 0));
        assertThat(choice.sounding()).containsExactly(0, 4, 7, 9);
    }

    @Test
    void beyond_the_last_column_the_enharmonic_button_serves() {
        ButtonChoice choice = first(48, symbol("G#", ChordKind.MINOR));

        assertThat(choice).hasToString("Ab bass + Ab minor");
        assertThat(choice.missing()).isEmpty();
        assertThat(choice.substitutions()).containsExactly(Substitution.ENHARMONIC_COLUMN);
    }

    @Test
    void beyond_every_column_the_nearest_substitute_serves_and_is_stated() {
        ButtonChoice choice = first(12, symbol("E", ChordKind.MINOR));

        assertThat(choice.isSilent()).isFalse();
        assertThat(choice.missing()).isNotEmpty();
        assertThat(choice.substitutions())
                .contains(Substitution.NO_MINOR_ROW, Substitution.BEYOND_COLUMNS, Substitution.OTHER_BASS);
    }

    @Test
    void a_chord_that_nothing_comes_near_is_silent_with_all_its_tones_missing() {
        ButtonChoice choice = first(8, symbol("F#", ChordKind.MAJOR));

        assertThat(choice.isSilent()).isTrue();
        assertThat(choice.missing()).containsExactly(1, 6, 10);
        assertThat(choice.substitutions()).containsExactly(Substitution.NOT_PLAYABLE);
    }

    @Test
    void a_120_offers_the_same_chord_at_both_ends() {
        assertThat(choices(120, symbol("A", ChordKind.MAJOR)))
                .extracting(ButtonChoice::chord)
                .contains(List.of(new BassButton(BassRow.MAJOR, 3)), List.of(new BassButton(BassRow.MAJOR, -9)));
    }

    @Test
    void no_chord_is_silent_and_misses_nothing() {
        assertThat(choices(72, ChordSymbol.of(C, ChordKind.NONE))).containsExactly(ButtonChoice.SILENT);
    }

    @Test
    void an_instrument_without_bass_misses_every_tone() {
        List<ButtonChoice> choices = new ChordButtons(StradellaBass.none()).choices(symbol("C", ChordKind.MAJOR));

        assertThat(choices).hasSize(1);
        assertThat(choices.get(0).missing()).containsExactly(0, 4, 7);
        assertThat(choices.get(0).substitutions()).containsExactly(Substitution.NO_BASS_SIDE);
    }

    @Test
    void a_flat_ninth_is_found_by_search() {
        ChordSymbol symbol = new ChordSymbol(
                C, ChordKind.DOMINANT, List.of(new ChordDegree(9, -1, ChordDegree.Change.ADD)), Optional.empty(), "");

        ButtonChoice choice = first(120, symbol);

        assertThat(choice.sounding()).contains(0, 1, 4, 10);
        assertThat(choice.missing()).isEmpty();
        assertThat(choice.foreign()).isEmpty();
    }

    @Test
    void degrees_that_spell_another_kind_take_its_buttons() {
        ChordSymbol symbol = new ChordSymbol(
                C, ChordKind.MAJOR, List.of(new ChordDegree(7, 0, ChordDegree.Change.ADD)), Optional.empty(), "");

        assertThat(first(120, symbol)).hasToString("C bass + C seventh");
    }

    @Test
    void a_changed_chord_keeps_the_buttons_of_its_plain_kind_as_a_choice() {
        for (ChordDegree degree : List.of(
                new ChordDegree(9, 1, ChordDegree.Change.ADD), new ChordDegree(5, -1, ChordDegree.Change.ALTER))) {
            ChordSymbol symbol = new ChordSymbol(C, ChordKind.DOMINANT, List.of(degree), Optional.empty(), "");

            assertThat(choices(120, symbol)).extracting(ButtonChoice::toString).contains("C bass + C seventh");
            assertThat(first(120, symbol).missing()).isEmpty();
        }
    }

    /** Arithmetic on the tones of the buttons: which buttons sound which tones, not which a player should take. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "C bass + C major, 0 4 7", "C bass + C minor, 0 3 7", "C bass + C seventh, 0 4 10",
        "C bass + C seventh + C major, 0 4 7 10", "C seventh + Ab bass, 0 4 8 10", "C bass + Eb major, 0 3 7 10",
        "C bass + E minor, 0 4 7 11", "C major + A minor, 0 4 7 9", "C minor + C diminished, 0 3 7 9",
        "C seventh + G minor, 0 2 4 7 10", "C bass + Eb minor, 0 3 6 10", "Eb diminished, 0 3 6",
        "C diminished + Eb diminished, 0 3 6 9", "C bass + F bass + G bass, 0 5 7", "C bass + G bass + D bass, 0 2 7",
        "E counterbass + C major, 0 4 7", "G bass + C major, 0 4 7"
    })
    void named_combinations_sound_their_tones(String buttons, String tones) {
        TreeSet<Integer> united = new TreeSet<>();
        for (String button : buttons.split(" \\+ ")) {
            String[] words = button.split(" ");
            int column = name(words[0]).fifths() - (words[1].equals("counterbass") ? 4 : 0);
            united.addAll(new BassButton(BassRow.valueOf(words[1].toUpperCase(Locale.ROOT)), column).pitchClasses());
        }

        assertThat(united)
                .containsExactlyElementsOf(
                        Arrays.stream(tones.split(" ")).map(Integer::valueOf).toList());
    }

    /** The bass of the next column is the fifth; the counterbass of a column is its third. */
    @Test
    void the_bass_takes_turns_with_the_fifth_and_is_coloured_by_the_third() {
        ChordButtons buttons = new ChordButtons(StradellaBass.ofSize(72));
        ChordSymbol symbol = symbol("C", ChordKind.MAJOR);
        ButtonChoice choice = buttons.choices(symbol).get(0);

        assertThat(buttons.alternateBasses(symbol, choice).get(0)).isEqualTo(new BassButton(BassRow.BASS, 1));
        assertThat(buttons.alternateBasses(symbol, choice)).contains(new BassButton(BassRow.COUNTERBASS, -3));
        assertThat(buttons.thirds(symbol, choice).get(0)).isEqualTo(new BassButton(BassRow.COUNTERBASS, 0));
    }

    @Test
    void a_diminished_chord_takes_turns_with_its_own_fifth() {
        ChordButtons buttons = new ChordButtons(StradellaBass.ofSize(120));
        ChordSymbol symbol = symbol("B", ChordKind.DIMINISHED);

        assertThat(buttons.alternateBasses(symbol, buttons.choices(symbol).get(0)))
                .isNotEmpty()
                .allSatisfy(button -> assertThat(button.pitchClasses()).containsExactly(5));
    }

    @Test
    void neither_missing_tones_nor_wrong_basses_come_with_a_larger_instrument() {
        List<StradellaBass> layouts = layouts();
        List<String> growing = new ArrayList<>();
        int compared = 0;
        for (ChordSymbol symbol : symbols()) {
            Map<StradellaBass, ButtonChoice> first = new HashMap<>();
            layouts.forEach(layout ->
                    first.put(layout, new ChordButtons(layout).choices(symbol).get(0)));
            for (StradellaBass small : layouts)
                for (StradellaBass large : layouts) {
                    if (!holds(large, small)) continue;
                    compared++;
                    ButtonChoice less = first.get(small);
                    ButtonChoice more = first.get(large);
                    boolean grows = more.missing().size() > less.missing().size();
                    boolean gainsBass = more.hasWrittenBass() && !less.hasWrittenBass();
                    boolean losesBass = less.hasWrittenBass() && !more.hasWrittenBass();
                    if (losesBass || grows && !gainsBass)
                        growing.add(symbol + ": " + small.buttons() + " " + less + ", " + large.buttons() + " " + more);
                }
        }
        assertThat(growing).isEmpty();
        assertThat(compared).isGreaterThan(10_000);
    }

    private static boolean holds(StradellaBass large, StradellaBass small) {
        return large.buttons() > small.buttons() && large.allButtons().containsAll(small.allButtons());
    }

    /** Every size, and 72 buttons with two of them broken, without a counterbass row, or ragged. */
    private static List<StradellaBass> layouts() {
        List<StradellaBass> layouts = new ArrayList<>(ChordLayouts.sizes());
        StradellaBass usual = StradellaBass.ofSize(72);
        layouts.add(usual.with(usual.singles()
                .withBroken(List.of(new BassButton(BassRow.SEVENTH, 0), new BassButton(BassRow.BASS, 2)))));
        layouts.add(StradellaBass.ofRows(usual.rows().stream()
                .filter(row -> row.row() != BassRow.COUNTERBASS)
                .toList()));
        layouts.add(StradellaBass.ofRows(List.of(
                ButtonRow.of(BassRow.BASS, -4, 10),
                ButtonRow.of(BassRow.MAJOR, -3, 8),
                ButtonRow.of(BassRow.MINOR, -1, 6),
                ButtonRow.of(BassRow.SEVENTH, -1, 5))));
        layouts.add(StradellaBass.ofSize(120).displaced(BassRow.DIMINISHED, -1));
        return layouts;
    }

    /** Every seventh. */
    private static List<ChordSymbol> someSymbols() {
        List<ChordSymbol> every = symbols();
        return IntStream.range(0, every.size() / 7)
                .mapToObj(i -> every.get(7 * i))
                .toList();
    }

    /** Kinds with degrees added, altered and taken out, and with a slash bass besides. */
    private static List<ChordSymbol> changed() {
        List<ChordSymbol> changed = new ArrayList<>();
        for (ChordKind kind : List.of(ChordKind.MAJOR, ChordKind.MINOR_SEVENTH, ChordKind.DOMINANT, ChordKind.OTHER))
            for (ChordDegree degree : List.of(
                    new ChordDegree(9, -1, ChordDegree.Change.ADD),
                    new ChordDegree(11, 1, ChordDegree.Change.ADD),
                    new ChordDegree(5, 1, ChordDegree.Change.ALTER),
                    new ChordDegree(3, 0, ChordDegree.Change.SUBTRACT)))
                for (Optional<NoteName> bass : List.of(Optional.<NoteName>empty(), Optional.of(name("A"))))
                    changed.add(new ChordSymbol(name("Eb"), kind, List.of(degree), bass, ""));
        return changed;
    }

    private static List<ChordSymbol> symbols() {
        List<ChordSymbol> symbols = new ArrayList<>();
        for (ChordKind kind : ChordKind.values())
            for (int fifths = -6; fifths <= 6; fifths++) {
                symbols.add(ChordSymbol.of(NoteName.ofFifths(fifths), kind));
                for (int bass : List.of(1, 4, -2, 2))
                    symbols.add(new ChordSymbol(
                            NoteName.ofFifths(fifths),
                            kind,
                            List.of(),
                            Optional.of(NoteName.ofFifths(fifths + bass)),
                            ""));
            }
        return symbols;
    }

    @Test
    void what_sounds_is_missing_or_foreign_adds_up() {
        List<ChordSymbol> symbols = new ArrayList<>(someSymbols());
        symbols.addAll(changed());
        for (StradellaBass layout : layouts())
            for (ChordSymbol symbol : symbols)
                for (ButtonChoice choice : new ChordButtons(layout).choices(symbol)) {
                    TreeSet<Integer> wanted = new TreeSet<>(symbol.pitchClasses());
                    if (!symbol.isSilent()) symbol.bass().ifPresent(bass -> wanted.add(bass.pitchClass()));
                    TreeSet<Integer> united = new TreeSet<>();
                    choice.buttons().forEach(button -> united.addAll(button.pitchClasses()));
                    assertThat(choice.buttons()).allMatch(layout::has);
                    assertThat(choice.sounding()).isEqualTo(united);
                    wanted.addAll(choice.foreign());
                    wanted.removeAll(choice.missing());
                    wanted.removeAll(choice.leftOut());
                    assertThat(choice.sounding()).isEqualTo(wanted);
                }
    }

    @Test
    void the_list_is_short_without_repeats_and_the_same_each_time() {
        for (StradellaBass layout : layouts())
            for (ChordSymbol symbol : someSymbols()) {
                List<ButtonChoice> choices = new ChordButtons(layout).choices(symbol);
                assertThat(choices).isNotEmpty().hasSizeLessThanOrEqualTo(8).doesNotHaveDuplicates();
                assertThat(new ChordButtons(layout).choices(symbol)).isEqualTo(choices);
            }
    }
}
