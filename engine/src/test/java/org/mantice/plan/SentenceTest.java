package org.mantice.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class SentenceTest {
    @Test
    void argumentsStandWhereTheTemplateWantsThem() {
        Sentence sentence = Sentence.of("take-register", "Take {1} in pass {0}: {1}.", 2, "bassoon {0}");

        assertThat(sentence.args()).containsExactly("2", "bassoon {0}");
        assertThat(sentence).hasToString("Take bassoon {0} in pass 2: bassoon {0}.");
    }

    @Test
    void aTemplateWithoutArgumentsIsTheSentence() {
        assertThat(Sentence.of("free-a-lock", "Free a lock."))
                .isEqualTo(new Sentence("free-a-lock", List.of(), "Free a lock."));
    }

    @Test
    void aCodeIsOfLowerCaseLettersAndHyphens() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sentence.of("Free a lock", "Free a lock."))
                .withMessageContaining("Free a lock");
    }
}
