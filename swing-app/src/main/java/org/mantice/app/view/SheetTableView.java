package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Selection;
import org.mantice.app.model.SheetColumn;
import org.mantice.app.model.SheetTableModel;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.Words;

/**
 * The sheet as a table: for players who hear it rather than see it. The cell that the arrows go to is what is selected
 * everywhere, and the table follows what is selected elsewhere.
 */
public final class SheetTableView extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final JComboBox<String> plans = new JComboBox<>();
    private final Moments moments = new Moments();
    private final JTable table = new JTable(moments);
    private final JLabel empty;
    private transient SheetTableModel sheet;
    private transient Optional<PlannerState> before = Optional.empty();
    private boolean following;

    public SheetTableView(PlannerModel model, Words words) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        this.sheet = new SheetTableModel(model.state(), words, List.of());
        this.empty = new JLabel(words.text("table.empty"));
        JPanel head = new JPanel(new WrappingLayout(4, 3));
        JLabel label = new JLabel(words.text("table.plan"));
        label.setLabelFor(plans);
        plans.getAccessibleContext().setAccessibleName(words.text("table.plan"));
        plans.addActionListener(event -> showOtherPlans());
        head.add(label);
        head.add(plans);
        head.add(empty);
        add(head, BorderLayout.PAGE_START);
        setUpTable();
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        add(scroll);
        getAccessibleContext().setAccessibleName(words.text("table.title"));
        Tables.keepInView(table, this);
        model.addListener(this::show);
        show(model.state());
    }

    private void setUpTable() {
        Tables.walkCells(table);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.setDefaultRenderer(Object.class, new Spoken());
        table.getAccessibleContext().setAccessibleName(words.text("table.title"));
        table.getSelectionModel().addListSelectionListener(event -> selected(event.getValueIsAdjusting()));
        table.getColumnModel()
                .getSelectionModel()
                .addListSelectionListener(event -> selected(event.getValueIsAdjusting()));
    }

    private void selected(boolean adjusting) {
        int row = table.getSelectedRow();
        int column = table.getSelectedColumn();
        if (following || adjusting || row < 0 || column < 0) return;
        Optional<Selection> selection = sheet.selectionAt(row, column);
        if (selection.isPresent() && !selection.equals(model.state().selection())) model.select(selection);
    }

    private void show(PlannerState state) {
        following = true;
        if (before.isEmpty() || !sameSheet(before.get(), state)) {
            fillPlans(state);
            rebuild(state);
        }
        before = Optional.of(state);
        follow(state);
        following = false;
    }

    private static boolean sameSheet(PlannerState one, PlannerState other) {
        return one.offers().equals(other.offers())
                && one.performance().equals(other.performance())
                && one.compared().equals(other.compared())
                && one.chosen() == other.chosen()
                && one.reading().equals(other.reading())
                && one.differences().equals(other.differences())
                && one.differenceAt().equals(other.differenceAt())
                && one.setup().locks().equals(other.setup().locks());
    }

    /** All on the sheet, then each of them alone. */
    private void fillPlans(PlannerState state) {
        List<String> entries = new ArrayList<>(List.of(words.text("table.allPlans")));
        for (int i = 0; i < state.compared().size(); i++)
            entries.add(words.text(
                    "table.onePlan",
                    PlanWords.mark(state.offers().get(state.compared().get(i)).letter(), i)));
        int selected = Math.max(0, entries.indexOf(plans.getSelectedItem()));
        plans.removeAllItems();
        entries.forEach(plans::addItem);
        plans.setSelectedIndex(selected);
        plans.setEnabled(!state.compared().isEmpty());
        empty.setVisible(state.compared().isEmpty());
    }

    private void showOtherPlans() {
        if (following) return;
        following = true;
        rebuild(model.state());
        follow(model.state());
        following = false;
    }

    private void rebuild(PlannerState state) {
        int row = table.getSelectedRow();
        int column = table.getSelectedColumn();
        List<SheetColumn> columns = sheet.columns();
        int alone = plans.getSelectedIndex();
        sheet = new SheetTableModel(
                state,
                words,
                alone <= 0 ? state.compared() : List.of(state.compared().get(alone - 1)));
        if (!columns.equals(sheet.columns())) moments.fireTableStructureChanged();
        else moments.fireTableDataChanged();
        for (int i = 0; i < table.getColumnCount(); i++) Tables.fit(table, i);
        if (row < table.getRowCount() && column < table.getColumnCount()) Tables.select(table, row, column);
    }

    /** A cell that points at the selection already stays: hand and finger are one place. */
    private void follow(PlannerState state) {
        if (state.selection().isEmpty()) return;
        int row = table.getSelectedRow();
        int column = table.getSelectedColumn();
        boolean there =
                row >= 0 && column >= 0 && sheet.selectionAt(row, column).equals(state.selection());
        if (!there) sheet.cellOf(state.selection().get()).ifPresent(at -> Tables.select(table, at.row(), at.column()));
    }

    private final class Moments extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return sheet == null ? 0 : sheet.rowCount();
        }

        @Override
        public int getColumnCount() {
            return sheet == null ? 0 : sheet.columns().size();
        }

        @Override
        public String getColumnName(int column) {
            return sheet.columns().get(column).title();
        }

        @Override
        public String getValueAt(int row, int column) {
            return sheet.text(row, column);
        }
    }

    /** Says column and place with the cell. */
    private final class Spoken extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(of, value, selected, focused, row, column);
            String said = value.toString().isEmpty() ? words.text("table.nothing") : value.toString();
            String spoken = words.text("table.cell", sheet.columns().get(column).title(), sheet.place(row), said);
            getAccessibleContext().setAccessibleName(spoken);
            setToolTipText(spoken);
            return this;
        }
    }
}
