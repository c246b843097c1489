package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.tune.ChordSymbol;

/**
 * O19, O22 to O24: combinations on all twelve roots of a 120. Am7 and Fm6: German encyclopaedia article; the others:
 * arithmetic on the tones of the buttons (R. Stradling, Notes on the Stradella bass).
 */
class CombinationsTest {
    private static final StradellaBass FULL = StradellaBass.ofSize(120);

    /** Buttons as row letters and semitones above the root: b bass, c counterbass by its sound, M, m, 7, d. */
    @ParameterizedTest(name = "C{0}: {1}")
    @CsvSource({
        "'', b0 M0, 0 4 7",
        "m, b0 m0, 0 3 7",
        "7, b0 70, 0 4 10",
        "7, b0 70 M0, 0 4 7 10",
        "7#5, 70 b8, 0 4 8 10",
        "7#5, 70 c8, 0 4 8 10",
        "m7, b0 M3, 0 3 7 10",
        "maj7, b0 m4, 0 4 7 11",
        "6, M0 m9, 0 4 7 9",
        "m6, m0 d0, 0 3 7 9",
        "9, 70 m7, 0 2 4 7 10",
        "m7b5, b0 m3, 0 3 6 10",
        "dim, d3, 0 3 6",
        "dim7, d0 d3, 0 3 6 9",
        "sus4, b0 b5 b7, 0 5 7",
        "sus2, b0 b2 b7, 0 2 7",
        "'', c4 M0, 0 4 7",
        "'', b7 M0, 0 4 7"
    })
    void named_combinations_sound_their_tones_on_every_root(String symbol, String buttons, String tones) {
        for (String root : ChordLayouts.ROOTS) {
            int semitones = ChordLayouts.symbol(root).root().pitchClass();
            TreeSet<Integer> expected = new TreeSet<>();
            for (String tone : tones.split(" ")) expected.add((Integer.parseInt(tone) + semitones) % 12);
            TreeSet<Integer> united = new TreeSet<>();
            for (String button : buttons.split(" "))
                united.addAll(button(button, semitones).pitchClasses());

            assertThat(united).as(root + symbol).isEqualTo(expected);
        }
    }

    private static BassButton button(String text, int root) {
        BassRow row = BassRow.values()["cbMm7d".indexOf(text.charAt(0))];
        return FULL.buttons(row, (Integer.parseInt(text.substring(1)) + root) % 12)
                .get(0);
    }

    /** Which of them the engine puts first, and that on every root in the same shape where the columns reach. */
    @ParameterizedTest(name = "C{0}: {1}")
    @CsvSource({
        "'', b0 M0",
        "m, b0 m0",
        "7, b0 70",
        "m7, b0 M3",
        "maj7, b0 m4",
        "m6, b0 m0 d0",
        "9, b0 70 m7",
        "m7b5, b0 m3",
        "dim, b0 d0",
        "dim7, b0 d0",
        "sus4, b0 b5 b7",
        "sus2, b0 b2 b7"
    })
    void the_custom_buttons_come_first_on_every_root(String rest, String buttons) {
        for (String root : ChordLayouts.ROOTS) {
            ChordSymbol symbol = ChordLayouts.symbol(root + rest);
            ButtonChoice first = new ChordButtons(FULL).choices(symbol).get(0);
            List<String> wanted = new ArrayList<>();
            for (String button : buttons.split(" "))
                wanted.add(button.charAt(0) + " "
                        + (Integer.parseInt(button.substring(1)) + symbol.root().pitchClass()) % 12);
            String[] got = first.buttons().stream()
                    .map(button -> "bbMm7d".charAt(button.row().ordinal()) + " "
                            + button.noteName().pitchClass())
                    .toArray(String[]::new);

            assertThat(wanted)
                    .as(symbol + ": " + first + " " + Arrays.toString(got))
                    .containsExactlyInAnyOrder(got);
            assertThat(first.missing()).as(symbol.toString()).isEmpty();
        }
    }
}
