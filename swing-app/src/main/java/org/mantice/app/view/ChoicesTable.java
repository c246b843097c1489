package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.mantice.app.model.WhyModel;
import org.mantice.app.words.Words;

/** What else was possible at a place and what it would cost more, the cheapest first. */
final class ChoicesTable extends JPanel {
    /** As many are shown until all are asked for. */
    private static final int FIRST = 8;

    private final transient Words words;
    private final Rows rows = new Rows();
    private final JTable table;
    private final JLabel note = new JLabel();
    private final JButton more = new JButton();
    private transient List<WhyModel.Row> all = List.of();
    private boolean showAll;

    /** @param taken told of a choice that Enter or a double click takes */
    ChoicesTable(Words words, Consumer<WhyModel.Row> taken) {
        super(new BorderLayout());
        this.words = words;
        this.table = new JTable(rows);
        JLabel title = new JLabel(words.text("why.choices"));
        title.setLabelFor(table);
        add(title, BorderLayout.PAGE_START);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setFillsViewportHeight(true);
        table.getTableHeader().setReorderingAllowed(false);
        table.setDefaultRenderer(Object.class, new Cells());
        table.getAccessibleContext().setAccessibleName(words.text("why.choices"));
        Tables.leaveWithTab(table);
        Tables.onKey(table, "ENTER", () -> selected().ifPresent(taken));
        table.addMouseListener(new java.awt.event.MouseAdapter() {
            @Override
            public void mouseClicked(java.awt.event.MouseEvent event) {
                if (event.getClickCount() == 2) selected().ifPresent(taken);
            }
        });
        add(new JScrollPane(table));
        more.setVisible(false);
        more.addActionListener(event -> {
            showAll = true;
            refresh();
        });
        JPanel foot = new JPanel(new WrappingLayout(4));
        foot.add(note);
        foot.add(more);
        add(foot, BorderLayout.PAGE_END);
        table.setPreferredScrollableViewportSize(
                new java.awt.Dimension(table.getPreferredSize().width, FIRST * table.getRowHeight()));
    }

    void show(WhyModel why) {
        if (!why.choices().equals(all)) {
            all = why.choices();
            showAll = false;
            refresh();
        }
        note.setText(why.note());
        note.setVisible(!why.note().isEmpty());
    }

    private void refresh() {
        int row = table.getSelectedRow();
        rows.fireTableDataChanged();
        if (row >= 0 && row < rows.getRowCount()) table.setRowSelectionInterval(row, row);
        Tables.fit(table, 1);
        more.setVisible(all.size() > rows.getRowCount());
        more.setText(words.text("why.showAll", all.size()));
        more.getAccessibleContext().setAccessibleName(more.getText());
    }

    /** Told whenever another choice, or none, is selected. */
    void onSelection(Runnable told) {
        table.getSelectionModel().addListSelectionListener(event -> told.run());
    }

    Optional<WhyModel.Row> selected() {
        int row = table.getSelectedRow();
        return row < 0 || row >= rows.getRowCount() ? Optional.empty() : Optional.of(all.get(row));
    }

    private final class Rows extends AbstractTableModel {
        @Override
        public int getRowCount() {
            if (all == null) return 0;
            return showAll ? all.size() : Math.min(FIRST, all.size());
        }

        @Override
        public int getColumnCount() {
            return 2;
        }

        @Override
        public String getColumnName(int column) {
            return words.text(column == 0 ? "why.choice" : "why.extra");
        }

        @Override
        public String getValueAt(int row, int column) {
            WhyModel.Row of = all.get(row);
            if (column == 1) return of.extra();
            return of.own() ? words.text("why.own", of.value()) : of.value();
        }
    }

    /** Numbers at the right, the plan's own choice in bold as well as in words; each cell says its column. */
    private final class Cells extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(of, value, selected, focused, row, column);
            setHorizontalAlignment(column == 1 ? SwingConstants.TRAILING : SwingConstants.LEADING);
            if (all.get(row).own()) setFont(getFont().deriveFont(java.awt.Font.BOLD));
            setToolTipText(value.toString());
            getAccessibleContext().setAccessibleName(words.text("why.cell", rows.getColumnName(column), value));
            return this;
        }
    }
}
