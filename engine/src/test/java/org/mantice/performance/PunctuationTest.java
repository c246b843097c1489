package org.mantice.performance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class PunctuationTest {
    @Test
    void signAfterASyllableTellsHowMuchOneBreathes() {
        assertThat(List.of("bell", "bell,", "bell;", "bell.\u201d", "bell?)", "bell\u2014", "", "!"))
                .extracting(Punctuation::of)
                .containsExactly(
                        Punctuation.NONE,
                        Punctuation.COMMA,
                        Punctuation.STOP,
                        Punctuation.STOP,
                        Punctuation.STOP,
                        Punctuation.COMMA,
                        Punctuation.NONE,
                        Punctuation.STOP);
    }

    @Test
    void signOfAMelismaStandsAfterItsLastNote() {
        Tune tune = Tunes.melody("4/4", "C4 q 'Ring!, D4 q 'bell., E4 q, F4 q | G4 h 'Ring, A4 h 'on;");

        List<Punctuation> signs = Performer.perform(tune).treble().stream()
                .map(TrebleMoment::punctuation)
                .toList();

        assertThat(signs.subList(0, 5))
                .containsExactly(
                        Punctuation.STOP, Punctuation.NONE, Punctuation.NONE, Punctuation.STOP, Punctuation.NONE);
    }
}
