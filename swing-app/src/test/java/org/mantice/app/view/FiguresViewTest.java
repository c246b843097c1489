package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseListener;
import java.util.List;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;

class FiguresViewTest {
    private final PlannerModel model = Planned.of("the-rusty-gate");
    private final FiguresView view = view();
    /** The row titles come first or second; the plans have as many columns as there are offers. */
    private final JTable table = Planned.all(view, JTable.class).stream()
            .filter(JTable::isFocusable)
            .findFirst()
            .orElseThrow();

    private FiguresView view() {
        Looks.use(false);
        FiguresView made = new FiguresView(model, Planned.ENGLISH);
        Pictures.layOut(made, 1200, 500);
        return made;
    }

    @Test
    void spaceTakesAPlanFromTheSheetAndPutsItBack() {
        List<Integer> before = model.state().compared();
        assertThat(before).contains(1);
        table.changeSelection(4, 1, false, false);

        press("SPACE");
        assertThat(model.state().compared()).doesNotContain(1);

        press("SPACE");
        assertThat(model.state().compared()).isEqualTo(before);
    }

    @Test
    void enterChoosesThePlanOfTheColumn() {
        table.changeSelection(0, 2, false, false);

        press("ENTER");

        assertThat(model.state().chosen()).isEqualTo(2);
        assertThat(table.getValueAt(FiguresTable.CHOSEN, 2)).isEqualTo("chosen");
        assertThat(table.getValueAt(FiguresTable.CHOSEN, 0)).isEqualTo("not chosen");
    }

    @Test
    void whoChoosesStaysInTheCell() {
        table.changeSelection(5, 2, false, false);

        press("ENTER");

        assertThat(table.getSelectedRow()).isEqualTo(5);
        assertThat(table.getSelectedColumn()).isEqualTo(2);
    }

    @Test
    void theLastPlanOnTheSheetStaysAndTheViewSaysSo() {
        model.compare(List.of(0));
        table.changeSelection(0, 0, false, false);

        press("SPACE");

        assertThat(model.state().compared()).containsExactly(0);
        assertThat(Planned.all(view, JLabel.class))
                .anyMatch(label -> "One plan at least stays on the sheet.".equals(label.getText()));
    }

    @Test
    void aClickOnTheHeadTogglesAndOneOnTheChosenRowChooses() {
        click(table.getTableHeader(), table.getCellRect(0, 1, true).x + 5, 5, MouseEvent.MOUSE_CLICKED);
        assertThat(model.state().compared()).doesNotContain(1);

        int y = table.getCellRect(FiguresTable.CHOSEN, 3, true).y + 3;
        click(table, table.getCellRect(0, 3, true).x + 5, y, MouseEvent.MOUSE_PRESSED);
        assertThat(model.state().chosen()).isEqualTo(3);
    }

    @Test
    void everyCellSpeaksItsRowItsPlanAndItsRank() {
        for (int row = 0; row < table.getRowCount(); row++)
            for (int column = 0; column < table.getColumnCount(); column++) {
                Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
                assertThat(cell.getAccessibleContext().getAccessibleName())
                        .contains("plan " + model.state().offers().get(column).letter())
                        .endsWith(table.getValueAt(row, column).toString());
                assertThat(cell.getAccessibleContext().getAccessibleDescription())
                        .endsWith(".");
            }
    }

    @Test
    void theHeadSaysAllOfThePlan() {
        assertThat(table.getColumnName(0)).matches("Plan A ●: best, cost \\d+\\.\\d\\d, (not )?proven best.*");
    }

    @Test
    void theTabulatorLeavesTheTable() {
        assertThat(table.areFocusTraversalKeysSet(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS))
                .isFalse();
    }

    @Test
    void moreOrFewerPlansMakeMoreOrFewerColumns() {
        model.setWishes(model.state().setup().wishes().withPlans(1));

        assertThat(table.getColumnCount()).isEqualTo(1);
    }

    private void press(String key) {
        Object name =
                table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke(key));
        Action action = table.getActionMap().get(name);
        action.actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, key));
    }

    private static void click(Component on, int x, int y, int kind) {
        MouseEvent event = new MouseEvent(on, kind, 0, 0, x, y, 1, false, MouseEvent.BUTTON1);
        for (MouseListener listener : on.getMouseListeners()) {
            // The look's own listeners ask for the screen.
            if (!listener.getClass().getName().contains("FiguresView")) continue;
            if (kind == MouseEvent.MOUSE_CLICKED) listener.mouseClicked(event);
            else listener.mousePressed(event);
        }
    }
}
