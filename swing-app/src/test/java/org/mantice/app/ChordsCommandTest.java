package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;
import static org.mantice.app.Calls.examples;

import org.junit.jupiter.api.Test;
import org.mantice.app.Calls.Answer;

class ChordsCommandTest {
    /** O28, layout of the 48 without sevenths. */
    @Test
    void aMissingRowIsSaidWithTheToneThatItCosts() {
        Answer answer = call("chords", "--accordion", "student-26-key-48-bass", "G7");

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().lines().toList())
                .hasSize(2)
                .startsWith("Student, 26 keys, 48 bass without sevenths")
                .last()
                .asString()
                .matches(
                        "G7 +G bass \\+ G major +G2 \\+ G3 B3 D4; missing F; left out .*the instrument has no seventh row"
                                + "|G7 +G bass \\+ G major +G2 \\+ G3 B3 D4; missing F; the instrument has no seventh row");
    }

    /** German encyclopaedia article: Am7 is A bass, as root or as counterbass of F, with C major. */
    @Test
    void everyAnswerIsGivenOnRequest() {
        Answer answer = call("chords", "--all", "Am7");

        assertThat(answer.out().lines().skip(1).map(line -> line.replaceAll(" {2,}.*", "")
                        .strip()))
                .startsWith("Am7");
        assertThat(answer.out())
                .contains("A bass + C major", "A counterbass + C major")
                .contains("A2 + G3 C4 E4");
    }

    @Test
    void withoutSymbolsEveryKindIsPrintedOnEveryRootForAProfileInAFile() {
        Answer answer =
                call("chords", "--accordion", examples().resolve("accordions/pims-26-key-48-bass.accordion.json"));

        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out().lines()).hasSize(1 + 32 * 13);
    }

    @Test
    void germanLettersAreReadOnRequest() {
        assertThat(call("chords", "--german", "H7").out()).contains("B bass + B seventh");
        assertThat(call("chords", "H7").code()).isEqualTo(2);
    }

    @Test
    void whatIsNoChordSymbolIsRefusedWithWhatIsAllowed() {
        Answer answer = call("chords", "Allegro");

        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err()).contains("symbol is 'Allegro'; allowed: chord symbols, as C, Am7");
    }
}
