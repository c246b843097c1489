package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Selection;
import org.mantice.app.model.States;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** Why and taste: named and painted in every language and look, with and without something to explain. */
class WhyAndTastePicturesTest {
    @ParameterizedTest
    @CsvSource({"en,false", "en,true", "de,false", "de,true"})
    void everythingThatTakesTheFocusHasANameAndIsPainted(String language, boolean dark) throws IOException {
        Looks.use(dark);
        Words words = Words.of(Locale.forLanguageTag(language));
        PlannerModel model = Planned.nothing();
        Map<String, JPanel> panels = new LinkedHashMap<>();
        Actions actions = new Actions(words);
        PlannerCommands.bind(model, words, actions);
        panels.put("why", new WhyView(model, new TuneEditor(model), words, actions));
        panels.put("taste", new TasteView(model, words, actions));
        String look = language + (dark ? "-dark" : "-light");

        paint(panels, "nothing-" + look);
        model.open(States.open("the-ropewalk-march"));
        model.setTaste(model.state()
                .setup()
                .player()
                .taste()
                .with("bellows.turns", 2_500)
                .with("bellows.place", 0));
        paint(panels, "whole-" + look);
        model.select(Optional.of(
                new Selection(0, new Spot(Strip.REGISTERS, 0, 1, new WrittenPlace(0, MusicalTime.ZERO), 0))));
        model.lockSelected(false);
        paint(panels, "register-" + look);
        model.select(
                Optional.of(new Selection(0, new Spot(Strip.FINGERS, 1, 1, new WrittenPlace(1, MusicalTime.ZERO), 0))));
        paint(panels, "finger-" + look);
    }

    private static void paint(Map<String, JPanel> panels, String name) throws IOException {
        for (Map.Entry<String, JPanel> panel : panels.entrySet()) {
            AccessibleNames.check(panel.getValue());
            BufferedImage picture = Pictures.of(panel.getValue(), UIScale.scale(430), UIScale.scale(820));
            Pictures.keep(picture, "why-" + panel.getKey() + "-" + name);
            assertThat(Pictures.colours(picture)).as(panel.getKey()).isGreaterThan(20);
        }
    }
}
