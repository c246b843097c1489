package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.util.List;
import java.util.Locale;
import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.States;
import org.mantice.app.words.Words;
import org.mantice.player.Taste;

class TasteViewTest {
    private static final String TURNS = "bellows.turns";

    private final PlannerModel model = Planned.nothing();
    private TasteView view;

    @BeforeEach
    void showAView() {
        Looks.use(false);
        view = view(Planned.ENGLISH);
        model.open(States.open("the-rusty-gate"));
    }

    private TasteView view(Words words) {
        return new TasteView(model, words, Planned.actions(model, words));
    }

    private int weight() {
        return model.state().setup().player().taste().perMille(TURNS);
    }

    private JSlider slider() {
        return Planned.all(view, JSlider.class).stream()
                .filter(slider -> name(slider.getAccessibleContext()).startsWith("weight of Number of turns, "))
                .findFirst()
                .orElseThrow();
    }

    private static String name(AccessibleContext context) {
        return context.getAccessibleName();
    }

    private JSpinner number() {
        return Planned.named(view, JSpinner.class, "weight of Number of turns in per cent");
    }

    private JCheckBox switchOfTurns() {
        return Planned.named(view, JCheckBox.class, "Number of turns, on or off");
    }

    private void press(String action) {
        slider().getActionMap().get(action).actionPerformed(null);
    }

    private void letGo() {
        for (KeyListener listener : slider().getKeyListeners())
            listener.keyReleased(new KeyEvent(slider(), KeyEvent.KEY_RELEASED, 0, 0, KeyEvent.VK_RIGHT, '\0'));
    }

    @Test
    void plansFollowWhileASliderIsDraggedAndOneUndoTakesTheDragBack() {
        slider().setValueIsAdjusting(true);
        for (int value = 120; value <= 300; value += 60) {
            slider().setValue(value);
            assertThat(weight()).isEqualTo(value * 10);
        }
        slider().setValueIsAdjusting(false);
        slider().setValueIsAdjusting(true);
        slider().setValue(350);
        slider().setValueIsAdjusting(false);

        model.undo();

        assertThat(weight()).isEqualTo(3_000);
        assertThat(slider().getValue()).isEqualTo(300);
        model.undo();
        assertThat(weight()).isEqualTo(1_000);
        assertThat(model.state().undo()).isEmpty();
    }

    @Test
    void aSliderIsDraggedInRoundSteps() {
        slider().setValueIsAdjusting(true);
        slider().setValue(123);
        assertThat(weight()).isEqualTo(1_250);
        slider().setValueIsAdjusting(false);

        assertThat(slider().getValue()).isEqualTo(125);
    }

    @Test
    void keysGoByTenAndAKeyHeldDownIsOneStepToUndo() {
        press("positiveUnitIncrement");
        press("positiveUnitIncrement");
        press("negativeBlockIncrement");
        press("positiveUnitIncrement");
        letGo();

        assertThat(weight()).isEqualTo(1_100);
        model.undo();
        assertThat(weight()).isEqualTo(1_000);
        assertThat(model.state().undo()).isEmpty();
    }

    @Test
    void theExactNumberReachesAHundredTimesTheUsualWeightInPerMille() throws Exception {
        JFormattedTextField field = ((JSpinner.DefaultEditor) number().getEditor()).getTextField();
        field.setText("9999.9");
        field.commitEdit();
        assertThat(weight()).isEqualTo(99_999);
        assertThat(slider().getValue()).isEqualTo(400);

        number().setValue(10_000.0);

        assertThat(weight()).isEqualTo(100_000);
        assertThat(name(slider().getAccessibleContext())).isEqualTo("weight of Number of turns, 10,000 %");
    }

    /** The slider stands at its end: that it is left alone must not weigh the rule by that. */
    @Test
    void aWeightBeyondTheSliderSurvivesTheFocusPassingBy() {
        model.setTaste(Taste.PLAIN.with(TURNS, 50_000));

        for (FocusListener listener : slider().getFocusListeners())
            listener.focusLost(new FocusEvent(slider(), FocusEvent.FOCUS_LOST));
        letGo();

        assertThat(weight()).isEqualTo(50_000);
    }

    @Test
    void germanNumbersHaveACommaAndAreReadWithIt() throws Exception {
        view = view(Words.of(Locale.GERMAN));
        model.setTaste(Taste.PLAIN.with(TURNS, 1_234));
        JFormattedTextField field = Planned.all(view, JFormattedTextField.class).stream()
                .filter(one -> one.getText().equals("123,4"))
                .findFirst()
                .orElseThrow();

        field.setText("56,7");
        field.commitEdit();

        assertThat(weight()).isEqualTo(567);
    }

    @Test
    void aRuleSwitchedOnAgainWeighsWhatItWeighedBefore() {
        model.setTaste(Taste.PLAIN.with(TURNS, 2_500));

        switchOfTurns().doClick();
        assertThat(weight()).isZero();
        switchOfTurns().doClick();

        assertThat(weight()).isEqualTo(2_500);
    }

    @Test
    void aRuleSlidToNothingAndSwitchedOnAgainWeighsWhatItWeighedBeforeTheDrag() {
        model.setTaste(Taste.PLAIN.with(TURNS, 2_500));
        slider().setValueIsAdjusting(true);
        for (int value = 200; value >= 0; value -= 50) slider().setValue(value);
        slider().setValueIsAdjusting(false);
        assertThat(switchOfTurns().isSelected()).isFalse();

        switchOfTurns().doClick();

        assertThat(weight()).isEqualTo(2_500);
    }

    @Test
    void everyRuleAsUsualIsOneStep() {
        model.setTaste(Taste.PLAIN.with(TURNS, 2_500).with("fingering.span", 0));

        Planned.named(view, JButton.class, "Every rule as usual").doClick();

        assertThat(model.state().setup().player().taste()).isEqualTo(Taste.PLAIN);
        model.undo();
        assertThat(weight()).isEqualTo(2_500);
    }

    @Test
    void aLeaningIsTakenByItsButton() {
        JButton few = Planned.named(view, JButton.class, "Bellows: start from Few turns, long strokes");

        few.doClick();

        assertThat(model.state().setup().player().taste().weights()).isNotEmpty();
        assertThat(few.getAccessibleContext().getAccessibleDescription()).contains(" %");
    }

    @Test
    void whatIsNotFoundIsHiddenWithItsGroup() {
        JTextField find = Planned.named(view, JTextField.class, "Find a rule");

        find.setText("number of turns");

        assertThat(shownTitles()).containsExactly("Number of turns");
        find.setText("no such words");
        assertThat(shownTitles()).isEmpty();
        assertThat(Planned.all(view, JLabel.class))
                .anyMatch(label -> label.isVisible() && label.getText().equals("No rule speaks of that."));
        find.setText("");
        assertThat(shownTitles()).hasSizeGreaterThan(40);
    }

    private List<String> shownTitles() {
        return Planned.all(view, WeightRow.class).stream()
                .filter(row -> row.isVisible() && row.getParent().isVisible())
                .map(row -> Planned.all(row, JCheckBox.class).get(0).getText())
                .toList();
    }

    @Test
    void changedWeightsAreCalledChanged() {
        model.setTaste(Taste.PLAIN.with(TURNS, 1_500));

        assertThat(Planned.all(slider().getParent(), JLabel.class))
                .anyMatch(label -> label.getText().startsWith("· changed"));
        assertThat(slider().getAccessibleContext().getAccessibleDescription()).startsWith("changed");
    }

    @Test
    void whatGetsTheFocusIsScrolledIntoView() {
        Pictures.layOut(view, 400, 500);
        JSlider last = Planned.all(view, JSlider.class)
                .get(Planned.all(view, JSlider.class).size() - 1);
        JScrollPane scroll = Planned.all(view, JScrollPane.class).get(0);
        Rectangle place = SwingUtilities.convertRectangle(
                last.getParent(), last.getBounds(), scroll.getViewport().getView());
        assertThat(scroll.getViewport().getViewRect().contains(place)).isFalse();

        for (FocusListener listener : last.getFocusListeners())
            listener.focusGained(new FocusEvent(last, FocusEvent.FOCUS_GAINED));

        assertThat(scroll.getViewport().getViewRect().contains(place)).isTrue();
    }

    @Test
    void bothHandsWeightsCarryTheCaution() {
        assertThat(Planned.all(view, WrappedText.class))
                .filteredOn(text -> text.getText().contains("stop at pain"))
                .hasSize(2);
    }
}
