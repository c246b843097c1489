package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTree;
import org.junit.jupiter.api.Test;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.words.MusicWords;
import org.mantice.plan.Decision;

class DifferencesViewTest {
    private final PlannerModel model = Planned.of("the-rusty-gate");
    private final DifferencesView view = view();
    private final JTable table = Planned.all(view, JTable.class).get(0);
    private final JTree tree = Planned.all(view, JTree.class).get(0);

    private DifferencesView view() {
        Looks.use(false);
        return new DifferencesView(model, Planned.ENGLISH, Planned.actions(model, Planned.ENGLISH));
    }

    @Test
    void everyDifferenceIsARow() {
        assertThat(table.getRowCount())
                .isEqualTo(model.state().differences().size())
                .isPositive();
        assertThat(table.getColumnName(2)).isEqualTo("Plan A ●");
    }

    @Test
    void aSelectedRowIsSteppedTo() {
        table.setRowSelectionInterval(2, 2);

        assertThat(model.state().differenceAt()).hasValue(2);
        assertThat(model.state().selection().orElseThrow().spot())
                .isEqualTo(model.state().differences().get(2).spot());
    }

    @Test
    void steppingSelectsTheRow() {
        Planned.named(view, JButton.class, "Next difference").doClick();
        assertThat(table.getSelectedRow()).isZero();

        Planned.named(view, JButton.class, "Previous difference").doClick();
        assertThat(table.getSelectedRow()).isEqualTo(table.getRowCount() - 1);
    }

    @Test
    void aKindIsHiddenUntilItIsSteppedTo() {
        Decision.Kind kind = model.state().differences().get(0).kind();
        String name = new MusicWords(Planned.ENGLISH).kind(kind);
        JCheckBox filter = Planned.all(view, JCheckBox.class).stream()
                .filter(box -> box.getText().startsWith(name + " "))
                .findFirst()
                .orElseThrow();

        filter.doClick();
        assertThat(column(1)).isNotEmpty().doesNotContain(name);

        model.stepTo(0);
        assertThat(filter.isSelected()).isTrue();
        assertThat(table.getSelectedRow()).isZero();
        assertThat(column(1)).contains(name);
    }

    @Test
    void theTreeSaysWhatTheSecondPlanPaysMoreFor() {
        assertThat(root()).endsWith("Plan B ◆ against plan A ●");
        assertThat(tree.getModel().getChildCount(tree.getModel().getRoot())).isPositive();
    }

    @Test
    void otherPlansMakeAnotherTree() {
        model.compare(List.of(0, 1, 2));
        Planned.named(view, JComboBox.class, "Plan that pays more").setSelectedIndex(2);
        assertThat(root()).endsWith("Plan C ■ against plan A ●");

        Planned.named(view, JComboBox.class, "Plan that it is held against").setSelectedIndex(2);
        assertThat(root()).isEqualTo("The two plans are the same.");
    }

    @Test
    void onePlanAloneHasNoDifferences() {
        model.compare(List.of(1));

        assertThat(table.getRowCount()).isZero();
        assertThat(table.getColumnCount()).isEqualTo(3);
        assertThat(root()).startsWith("One plan is on the sheet");
    }

    private String root() {
        return tree.convertValueToText(tree.getModel().getRoot(), false, true, false, 0, false);
    }

    private List<Object> column(int column) {
        return IntStream.range(0, table.getRowCount())
                .mapToObj(row -> table.getValueAt(row, column))
                .toList();
    }
}
