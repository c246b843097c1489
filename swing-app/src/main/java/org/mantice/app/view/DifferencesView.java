package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.mantice.app.model.DifferencesModel;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.Words;
import org.mantice.plan.Decision;

/**
 * The differences between the plans on the sheet, listed, filtered by kind and stepped through; below them what one plan
 * pays more for than another.
 */
public final class DifferencesView extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final Set<Decision.Kind> hidden = EnumSet.noneOf(Decision.Kind.class);
    private final Map<Decision.Kind, JCheckBox> filters = new EnumMap<>(Decision.Kind.class);
    private final JPanel filterBar = new JPanel(new WrappingLayout(4, 3));
    private final JLabel count = new JLabel();
    private final Rows rows = new Rows();
    private final JTable table = Tables.scrolledSideways(rows);
    private final CostsPanel costs;
    private transient DifferencesModel shown =
            new DifferencesModel(List.of(), List.of(), List.of(), OptionalInt.empty(), "");
    private transient Optional<PlannerState> before = Optional.empty();
    private boolean following;

    public DifferencesView(PlannerModel model, Words words, Actions actions) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        this.costs = new CostsPanel(model, words);
        setUpTable();
        JPanel list = new JPanel(new BorderLayout());
        list.add(head(actions), BorderLayout.PAGE_START);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        list.add(scroll);
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, list, costs);
        split.setResizeWeight(0.6);
        split.setBorder(BorderFactory.createEmptyBorder());
        split.getAccessibleContext().setAccessibleName(words.text("differences.split"));
        add(split);
        getAccessibleContext().setAccessibleName(words.text("differences.title"));
        Tables.keepInView(table, this);
        model.addListener(this::show);
        show(model.state());
    }

    private JPanel head(Actions actions) {
        JPanel buttons = new JPanel(new WrappingLayout(4, 3));
        for (Command command : List.of(Command.PREVIOUS_DIFFERENCE, Command.NEXT_DIFFERENCE)) {
            JButton button = MenuLetters.leave(new JButton(actions.get(command)));
            button.getAccessibleContext().setAccessibleName(button.getText());
            buttons.add(button);
        }
        buttons.add(count);
        JPanel head = new JPanel(new BorderLayout());
        head.add(buttons, BorderLayout.PAGE_START);
        filterBar.getAccessibleContext().setAccessibleName(words.text("differences.filter"));
        head.add(filterBar, BorderLayout.PAGE_END);
        return head;
    }

    private void setUpTable() {
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        table.setFillsViewportHeight(true);
        Tables.leaveWithTab(table);
        table.setDefaultRenderer(Object.class, new Spoken());
        table.getAccessibleContext().setAccessibleName(words.text("differences.title"));
        table.getSelectionModel().addListSelectionListener(event -> {
            int row = table.getSelectedRow();
            if (following || event.getValueIsAdjusting() || row < 0) return;
            model.stepTo(shown.rows().get(row).index());
        });
    }

    private void show(PlannerState state) {
        boolean same = before.filter(last -> last.performance().equals(state.performance())
                        && last.offers().equals(state.offers())
                        && last.compared().equals(state.compared())
                        && last.differences().equals(state.differences())
                        && last.differenceAt().equals(state.differenceAt()))
                .isPresent();
        before = Optional.of(state);
        if (!same) showOther(state);
    }

    private void showOther(PlannerState state) {
        // Stepping shows what it steps to, even of a kind that was hidden.
        state.differenceAt()
                .ifPresent(at -> hidden.remove(state.differences().get(at).kind()));
        DifferencesModel next = DifferencesModel.of(state, words, hidden);
        boolean otherPlans = !next.plans().equals(shown.plans());
        boolean otherRows = !next.rows().equals(shown.rows());
        shown = next;
        count.setText(next.count());
        showFilters();
        following = true;
        if (otherPlans) rows.fireTableStructureChanged();
        else if (otherRows) rows.fireTableDataChanged();
        if (otherPlans || otherRows) for (int i = 0; i < table.getColumnCount(); i++) Tables.fit(table, i);
        Tables.selectRow(table, next.current().orElse(-1));
        following = false;
        costs.show(state);
    }

    private void showFilters() {
        List<Decision.Kind> kinds =
                shown.kinds().stream().map(DifferencesModel.KindCount::kind).toList();
        if (!List.copyOf(filters.keySet()).equals(kinds)) {
            filterBar.removeAll();
            filters.clear();
            for (Decision.Kind kind : kinds) {
                JCheckBox filter = new JCheckBox();
                filter.addActionListener(event -> filter(kind, filter.isSelected()));
                filter.setToolTipText(words.text("differences.filter.hint"));
                filters.put(kind, filter);
                filterBar.add(filter);
            }
            filterBar.revalidate();
        }
        for (DifferencesModel.KindCount kind : shown.kinds()) {
            JCheckBox filter = Objects.requireNonNull(filters.get(kind.kind()));
            filter.setText(kind.name());
            filter.setSelected(kind.shown());
            filter.getAccessibleContext().setAccessibleName(words.text("differences.filter.kind", kind.name()));
        }
    }

    private void filter(Decision.Kind kind, boolean show) {
        if (show) hidden.remove(kind);
        else hidden.add(kind);
        PlannerState state = model.state();
        shown = DifferencesModel.of(state, words, hidden);
        count.setText(shown.count());
        following = true;
        rows.fireTableDataChanged();
        Tables.selectRow(table, shown.current().orElse(-1));
        following = false;
    }

    private final class Rows extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return shown == null ? 0 : shown.rows().size();
        }

        @Override
        public int getColumnCount() {
            return shown == null ? 0 : 2 + shown.plans().size();
        }

        @Override
        public String getColumnName(int column) {
            return switch (column) {
                case 0 -> words.text("differences.place");
                case 1 -> words.text("differences.what");
                default -> words.text("differences.plan", shown.plans().get(column - 2));
            };
        }

        @Override
        public String getValueAt(int row, int column) {
            DifferencesModel.Row of = shown.rows().get(row);
            return column == 0
                    ? of.place()
                    : column == 1 ? of.what() : of.values().get(column - 2);
        }
    }

    /** Says the column with the cell, and shows in a tip what does not fit. */
    private final class Spoken extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(of, value, selected, focused, row, column);
            setToolTipText(value.toString());
            getAccessibleContext().setAccessibleName(words.text("differences.cell", rows.getColumnName(column), value));
            return this;
        }
    }
}
