package org.mantice.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class AccompanimentTest {
    private static final Tune FOUR_MEASURES = Tunes.melody("3/4", "C4 h. | C4 h. | C4 h. | C4 h.");

    private static Choice choice(int first, int last, int pass, String pattern, Hand hand) {
        return new Choice(
                first,
                last,
                pass == 0 ? OptionalInt.empty() : OptionalInt.of(pass),
                pattern.isEmpty() ? Optional.empty() : Optional.of(pattern),
                Optional.ofNullable(hand));
    }

    private static String at(Accompaniment asked, int measure, int pass) {
        PatternUse use = new PatternChooser(FOUR_MEASURES, Tempo.quarters(150), asked).at(measure, pass);
        return use.pattern().id() + " " + use.hand() + " " + use.why();
    }

    @Test
    void sectionsAndPassesHaveTheirOwnChoice() {
        Accompaniment asked = Accompaniment.NONE
                .with(choice(0, 1, 0, "sustained", null))
                .with(choice(1, 1, 2, "stops", null))
                .with(choice(1, 2, 0, "", Hand.BASS_ONLY));

        assertThat(at(asked, 0, 1)).isEqualTo("sustained FULL CHOSEN");
        assertThat(at(asked, 1, 1)).isEqualTo("sustained BASS_ONLY CHOSEN");
        assertThat(at(asked, 1, 2)).isEqualTo("stops BASS_ONLY CHOSEN");
        assertThat(at(asked, 2, 1)).isEqualTo("waltz BASS_ONLY METER");
        assertThat(at(asked, 3, 2)).isEqualTo("waltz FULL METER");
    }

    @Test
    void aPatternThatDoesNotFitTheMeterLeavesTheUsualOne() {
        assertThat(at(Accompaniment.NONE.with(choice(0, 3, 0, "four-beat", null)), 0, 1))
                .isEqualTo("waltz FULL METER");
    }

    @Test
    void aNewChoiceTakesThePlaceOfThoseThatItCovers() {
        Accompaniment asked = Accompaniment.NONE
                .with(choice(1, 2, 1, "stops", Hand.BASS_ONLY))
                .with(choice(0, 3, 0, "sustained", null));

        assertThat(asked.choices())
                .containsExactly(choice(1, 2, 1, "", Hand.BASS_ONLY), choice(0, 3, 0, "sustained", null));
        assertThat(asked.with(choice(0, 3, 0, "sustained", Hand.FULL)).choices())
                .hasSize(1);
    }

    @Test
    void unknownAndDoublePatternsAreRefused() {
        assertThatThrownBy(() -> Accompaniment.NONE.with(choice(0, 0, 0, "lost", null)))
                .hasMessageStartingWith("choices[0].pattern is lost; allowed: slow-waltz, waltz, ");
        BassPattern waltz = BassPatterns.shipped().get(1);
        assertThatThrownBy(() -> new Accompaniment(List.of(waltz), List.of()))
                .hasMessageContaining("patterns[0].id is waltz; allowed: one that no other pattern has");
    }

    @Test
    void rangesAreChecked() {
        assertThatThrownBy(() -> choice(3, 2, 0, "waltz", null)).hasMessageContaining("allowed: 3 to");
        assertThatThrownBy(() -> choice(-1, 2, 0, "waltz", null)).hasMessageContaining("firstMeasure is -1");
        assertThatThrownBy(() -> choice(0, 2, 0, "", null)).hasMessageContaining("allowed: a pattern, a hand, or both");
    }
}
