package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mantice.app.look.Looks;
import org.mantice.app.model.Answer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Selection;
import org.mantice.app.model.States;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.plan.Lock;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

class WhyViewTest {
    private static final Spot REGISTER = new Spot(Strip.REGISTERS, 0, 1, new WrittenPlace(0, MusicalTime.ZERO), 0);

    private final PlannerModel model = Planned.nothing();
    private WhyView view;

    @BeforeEach
    void showAPlannedTune() {
        Looks.use(false);
        Actions actions = new Actions(Planned.ENGLISH);
        PlannerCommands.bind(model, Planned.ENGLISH, actions);
        view = new WhyView(model, new TuneEditor(model), Planned.ENGLISH, actions);
        model.open(States.open("the-ropewalk-march"));
    }

    private void select(Spot spot) {
        model.select(Optional.of(new Selection(0, spot)));
    }

    private JTable choices() {
        return Planned.named(view, JTable.class, "What else was possible here");
    }

    private JButton button(String name) {
        return Planned.named(view, JButton.class, name);
    }

    private JList<?> locks() {
        return Planned.all(view, JList.class).get(0);
    }

    private CostTreeView tree() {
        return Planned.all(view, CostTreeView.class).get(0);
    }

    private static void press(JComponent in, String key) {
        Object name =
                in.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke(key));
        in.getActionMap().get(name).actionPerformed(null);
    }

    @Test
    void theWholePlanIsExplainedWhereNothingIsSelected() {
        assertThat(view.text())
                .startsWith("Select a finger")
                .contains("plan A pays\n", "  Right hand\n", "  Bellows\n");
        assertThat(tree().getRowCount()).isEqualTo(5);
        assertThat(Planned.all(view, ChoicesTable.class).get(0).getParent().isVisible())
                .isFalse();
        assertThat(button("Lock what is selected").isVisible()).isFalse();

        model.choose(1);

        assertThat(view.text()).contains("plan B pays");
    }

    @Test
    void whatASelectedRuleIsAboutIsSaidBelowTheTree() {
        tree().expandRow(1);
        tree().setSelectionRow(2);
        WrappedText about = Planned.named(view, WrappedText.class, "What the rule is about");

        assertThat(about.isVisible()).isTrue();
        assertThat(about.getText()).hasSizeGreaterThan(20);
        tree().setSelectionRow(0);
        assertThat(about.isVisible()).isFalse();
    }

    @Test
    void aRuleReadsItsDescriptionToThoseWhoDoNotSeeIt() {
        tree().expandRow(1);
        Object rule = tree().getPathForRow(2).getLastPathComponent();

        JComponent line = (JComponent)
                tree().getCellRenderer().getTreeCellRendererComponent(tree(), rule, false, false, false, 2, false);

        assertThat(line.getAccessibleContext().getAccessibleDescription()).hasSizeGreaterThan(20);
    }

    @Test
    void aFewChoicesAreShownUntilAllAreAskedFor() {
        select(REGISTER);
        assertThat(choices().getRowCount()).isEqualTo(8);
        choices().setRowSelectionInterval(3, 3);
        Object selected = choices().getValueAt(3, 0);

        button("Show all 22").doClick();

        assertThat(choices().getRowCount()).isEqualTo(22);
        assertThat(choices().getValueAt(choices().getSelectedRow(), 0)).isEqualTo(selected);
        assertThat(Planned.all(view, JButton.class))
                .noneMatch(button -> button.isVisible() && button.getText().startsWith("Show all"));
    }

    @Test
    void aChoiceIsTakenByItsButton() {
        select(REGISTER);
        assertThat(button("Take this").isEnabled()).isFalse();
        choices().setRowSelectionInterval(1, 1);
        String wanted = choices().getValueAt(1, 0).toString();

        button("Take this").doClick();

        assertThat(model.state().setup().locks()).hasSize(2).allMatch(lock -> lock.pass()
                .equals(OptionalInt.of(1)));
        assertThat(locks().getModel().getElementAt(0)).hasToString(wanted + " in pass 1");
        assertThat(view.text()).contains("Register: " + wanted, "Locked by you.", wanted + " – this plan");
    }

    @Test
    void aChoiceIsTakenByEnterForEveryTime() {
        select(REGISTER);
        choices().setRowSelectionInterval(1, 1);
        Planned.named(view, JCheckBox.class, "every time through").setSelected(true);

        press(choices(), "ENTER");

        assertThat(model.state().setup().locks()).hasSize(2).allMatch(lock -> lock.pass()
                .isEmpty());
    }

    @Test
    void aChoiceStaysSelectedWhereverItMovesToAndNoneIsSelectedElsewhere() {
        select(REGISTER);
        choices().setRowSelectionInterval(2, 2);
        String before = choices().getValueAt(2, 0).toString();

        model.setTaste(model.state().setup().player().taste().with("variation.hungry-register", 3_000));

        assertThat(choices().getValueAt(choices().getSelectedRow(), 0)).hasToString(before);
        select(new Spot(Strip.FINGERS, 1, 1, new WrittenPlace(1, MusicalTime.ZERO), 0));
        assertThat(choices().getSelectedRow()).isNegative();
        assertThat(button("Take this").isEnabled()).isFalse();
    }

    @Test
    void locksAreFreedOneByOneAndTheListIsGoneWithTheLast() {
        LocksPanel panel = Planned.all(view, LocksPanel.class).get(0);
        assertThat(panel.isVisible()).isFalse();
        select(REGISTER);
        button("Lock what is selected").doClick();
        assertThat(panel.isVisible()).isTrue();
        assertThat(button("Free this").isEnabled()).isFalse();

        locks().setSelectedIndex(1);
        button("Free this").doClick();

        assertThat(model.state().setup().locks()).hasSize(1).allMatch(Lock.Register.class::isInstance);
        locks().setSelectedIndex(0);
        press(locks(), "DELETE");
        assertThat(model.state().setup().locks()).isEmpty();
        assertThat(panel.isVisible()).isFalse();
    }

    @Test
    void aLockThatCannotBeMetIsFreedHere() {
        model.lock(new Lock.Register(OptionalInt.empty(), "no-such-switch"));
        assertThat(model.state().answer()).isInstanceOf(Answer.NotPlayable.class);

        button("Free everything").doClick();

        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        assertThat(model.state().setup().locks()).isEmpty();
    }

    @Test
    void aNoteSaysWhyThereIsNoChoice() {
        Spot first = new Spot(
                Strip.BELLOWS,
                model.state().offers().get(0).plan().bellows().strokes().get(0).measure(),
                1,
                model.state().offers().get(0).plan().bellows().strokes().get(0).place(),
                0);

        select(first);

        WrappedText note = Planned.named(view, WrappedText.class, "On the choices");
        assertThat(note.isVisible()).isTrue();
        assertThat(note.getText()).startsWith("The bellows begin here");
        assertThat(choices().getRowCount()).isZero();
    }
}
