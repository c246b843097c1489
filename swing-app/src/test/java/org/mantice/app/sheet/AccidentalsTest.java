package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/**
 * Cases worked by hand after the rules in Gould, Behind Bars (2011), chapter on accidentals, from memory: an accidental
 * holds to the barline on its own line or space and in no other octave; over a barline a tie carries it for the tied
 * note alone.
 */
class AccidentalsTest {
    @ParameterizedTest
    @CsvSource({
        "0, C4 F#4 F#4 F4, - # - n",
        "0, F#4 F#5 F5 F4, # # n n",
        "1, F#4 F4 F4 F#4, - n - #",
        "-1, B4 Bb4 Bb5 B5, n b - n",
        "2, C#5 C##5 C#5 C5, - x # n",
        "-3, Ab4 Abb4 A4, - bb n",
        "7, E#4 E4 Cb4, - n b",
        "-7, Cb4 C4 Fb4 F4, - n - n",
        // Tied over the barline: nothing at the tied note, the sign again at the next, also where the key would do.
        "0, ~F#4 F#4 F#4, - # -",
        "0, ~F#4 F4 F4, - n -",
        "0, ~F4 F4, - -",
        "1, ~F4 F#4 F#4, - # -",
        // A tie within the measure changes nothing.
        "0, F#4 ~F#4 F#4, # - -",
    })
    void signsStandWhereTheRulesPutThem(int fifths, String notes, String signs) {
        Accidentals accidentals = new Accidentals(new Key(fifths, Mode.NONE));

        String written = Arrays.stream(notes.split(" "))
                .map(note -> accidentals
                        .before(pitch(note), note.startsWith("~"))
                        .map(AccidentalsTest::letter)
                        .orElse("-"))
                .collect(Collectors.joining(" "));

        assertThat(written).isEqualTo(signs);
    }

    private static String letter(Glyph glyph) {
        return List.of("b", "n", "#", "x", "bb").get(glyph.ordinal() - Glyph.ACCIDENTAL_FLAT.ordinal());
    }

    private static Pitch pitch(String note) {
        String text = note.replace("~", "");
        int sharps = (int) text.chars().filter(c -> c == '#').count();
        int flats = (int) text.chars().filter(c -> c == 'b').count();
        return Pitch.of(Step.valueOf(text.substring(0, 1)), sharps - flats, text.charAt(text.length() - 1) - '0');
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 1", "7, 7", "-1, 1", "-7, 7", "4, 4"})
    void keyAltersAsManyLettersAsItHasSigns(int fifths, int altered) {
        Key key = new Key(fifths, Mode.NONE);

        assertThat(Arrays.stream(Step.values()).mapToInt(step -> Accidentals.ofKey(key, step)))
                .as("signs of %d fifths", fifths)
                .satisfies(alters -> {
                    assertThat(alters.stream().filter(alter -> alter != 0)).hasSize(altered);
                    assertThat(alters.stream().mapToInt(alter -> alter).sum()).isEqualTo(fifths);
                });
    }
}
