package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Selection;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;

class SheetTableViewTest {
    private final PlannerModel model = Planned.of("the-rusty-gate");
    private final SheetTableView view = view();
    private final JTable table = Planned.all(view, JTable.class).get(0);

    private SheetTableView view() {
        Looks.use(false);
        return new SheetTableView(model, Planned.ENGLISH);
    }

    @Test
    void theCellOfABellowsColumnSelectsTheBellowsThere() {
        table.changeSelection(0, column("B ◆ bellows"), false, false);

        Selection selection = model.state().selection().orElseThrow();
        assertThat(selection.offer()).isEqualTo(1);
        assertThat(selection.spot().strip()).isEqualTo(Strip.BELLOWS);
        assertThat(selection.spot().measure()).isZero();
    }

    @Test
    void aCellOfTheTuneLeavesTheSelectionAlone() {
        table.changeSelection(0, column("A ● bellows"), false, false);
        Optional<Selection> before = model.state().selection();

        table.changeSelection(3, column("Notes"), false, false);

        assertThat(model.state().selection()).isEqualTo(before);
        assertThat(table.getSelectedRow()).isEqualTo(3);
    }

    @Test
    void theTableFollowsWhatIsSelectedElsewhere() {
        model.stepTo(1);

        Selection selection = model.state().selection().orElseThrow();
        int row = table.getSelectedRow();
        assertThat(row).isNotNegative();
        assertThat(table.getColumnName(table.getSelectedColumn()))
                .startsWith(model.state().offers().get(selection.offer()).letter());
        assertThat(table.getValueAt(row, column("Plans differ in")).toString()).contains("(stepped to)");
    }

    @Test
    void fingerAndHandAreOnePlaceAndTheCellIsKept() {
        int hand = column("A ● hand");
        int row = IntStream.range(0, table.getRowCount())
                .filter(each -> !table.getValueAt(each, hand).toString().isEmpty())
                .findFirst()
                .orElseThrow();

        table.changeSelection(row, hand, false, false);

        assertThat(model.state().selection().orElseThrow().spot().strip()).isEqualTo(Strip.FINGERS);
        assertThat(table.getSelectedColumn()).isEqualTo(hand);
    }

    @Test
    void onePlanAloneCanBeShown() {
        JComboBox<?> plans = Planned.named(view, JComboBox.class, "Plans shown");
        plans.setSelectedIndex(2);

        assertThat(names()).contains("B ◆ fingers").doesNotContain("A ● fingers");
        plans.setSelectedIndex(0);
        assertThat(names()).contains("A ● fingers", "B ◆ fingers");
    }

    @Test
    void theReadingIsFollowed() {
        int asWritten = table.getRowCount();

        model.setReading(new Reading.AsPlayed());

        assertThat(table.getRowCount()).isGreaterThan(asWritten);
    }

    @Test
    void everyCellSpeaksItsColumnAndPlace() {
        for (int column = 0; column < table.getColumnCount(); column++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(0, column), 0, column);
            assertThat(cell.getAccessibleContext().getAccessibleName())
                    .startsWith(table.getColumnName(column) + ", measure ");
        }
    }

    private List<String> names() {
        return IntStream.range(0, table.getColumnCount())
                .mapToObj(table::getColumnName)
                .toList();
    }

    private int column(String name) {
        int column = names().indexOf(name);
        assertThat(column).as(name + " in " + names()).isNotNegative();
        return column;
    }
}
