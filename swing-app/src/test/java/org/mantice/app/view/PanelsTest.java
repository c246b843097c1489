package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.JTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.States;
import org.mantice.app.words.Words;

/** Setup, figures, differences and table: named and painted in every language and look. */
class PanelsTest {
    @ParameterizedTest
    @CsvSource({"en,false", "en,true", "de,false", "de,true"})
    void everythingThatTakesTheFocusHasANameAndIsPainted(String language, boolean dark) throws IOException {
        Looks.use(dark);
        Words words = Words.of(Locale.forLanguageTag(language));
        PlannerModel model = Planned.nothing();
        Map<String, JPanel> panels = panels(model, words);

        checkNames(panels);
        model.open(States.open("what-the-harbour-bell-said"));
        model.nextDifference();

        checkNames(panels);
        for (Map.Entry<String, JPanel> panel : panels.entrySet()) {
            BufferedImage picture = Pictures.of(panel.getValue(), 1100, 480);
            Pictures.keep(picture, "figures-" + panel.getKey() + "-" + language + (dark ? "-dark" : "-light"));
            assertThat(Pictures.colours(picture)).as(panel.getKey()).isGreaterThan(20);
        }
    }

    /** Tables take the focus too, though their keys are those of what contains them. */
    private static void checkNames(Map<String, JPanel> panels) {
        JPanel all = new JPanel();
        panels.values().forEach(all::add);
        AccessibleNames.check(all);
        assertThat(Planned.all(all, JTable.class)).hasSize(4).allMatch(table -> !table.getAccessibleContext()
                .getAccessibleName()
                .isBlank());
    }

    private static Map<String, JPanel> panels(PlannerModel model, Words words) {
        Actions actions = Planned.actions(model, words);
        Map<String, JPanel> panels = new LinkedHashMap<>();
        panels.put("setup", new SetupBar(model, words, actions, ProfileChoices.PRESETS));
        panels.put("figures", new FiguresView(model, words));
        panels.put("differences", new DifferencesView(model, words, actions));
        panels.put("table", new SheetTableView(model, words));
        return panels;
    }
}
