package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.words.Words;

class MenuLettersTest {
    static List<Locale> languages() {
        return Words.LANGUAGES;
    }

    @ParameterizedTest
    @MethodSource("languages")
    void noButtonOfThePlannerTakesAMarkedLetterFromTheMenus(Locale language) {
        Words words = Words.of(language);
        PlannerModel model = Planned.of("the-rusty-gate");

        PlannerPanel panel = new PlannerPanel(model, words, new Actions(words), ProfileChoices.PRESETS);

        List<AbstractButton> buttons = Planned.all(panel, AbstractButton.class);
        assertThat(buttons).hasSizeGreaterThan(15);
        assertThat(buttons).filteredOn(button -> button.getMnemonic() != 0).isEmpty();
    }
}
