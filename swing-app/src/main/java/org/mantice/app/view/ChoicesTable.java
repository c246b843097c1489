package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import org.mantice.app.model.WhyModel;
import org.mantice.app.words.Words;
import org.mantice.plan.Decision;

/** What else was possible at a place and what it would cost more, the cheapest first. */
final class ChoicesTable extends JPanel {
    /** As many are shown until all are asked for. */
    private static final int FIRST = 8;

    private final transient Words words;
    private final Rows rows = new Rows();
    private final JTable table;
    private final WrappedText note;
    private final JButton more = new JButton();
    private transient List<WhyModel.Row> all = List.of();
    private boolean showAll;

    /** @param taken told of a choice that Enter or a double click takes */
    ChoicesTable(Words words, Consumer<WhyModel.Row> taken) {
        super(new BorderLayout());
        this.words = words;
        this.table = new JTable(rows);
        this.note = new WrappedText("", words.text("why.note"));
        JLabel title = new JLabel(words.text("why.choices"));
        title.setLabelFor(table);
        title.setBorder(BorderFactory.createEmptyBorder(0, UIScale.scale(4), 0, UIScale.scale(4)));
        add(title, BorderLayout.PAGE_START);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setFillsViewportHeight(true);
        table.getTableHeader().setReorderingAllowed(false);
        table.setDefaultRenderer(Object.class, new Cells());
        table.getAccessibleContext().setAccessibleName(words.text("why.choices"));
        Tables.leaveWithTab(table);
        Tables.onKey(table, "ENTER", () -> selected().ifPresent(taken));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) selected().ifPresent(taken);
            }
        });
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        add(scroll);
        more.setVisible(false);
        more.addActionListener(event -> {
            Optional<Decision> selected = selected().map(row -> row.choice().decision());
            showAll = true;
            refresh(selected);
            table.requestFocusInWindow();
        });
        JPanel all = new JPanel(new WrappingLayout(4));
        all.add(more);
        JPanel foot = new JPanel(new BorderLayout());
        foot.add(note);
        foot.add(all, BorderLayout.PAGE_END);
        add(foot, BorderLayout.PAGE_END);
        table.setPreferredScrollableViewportSize(
                new Dimension(table.getPreferredSize().width, FIRST * table.getRowHeight()));
    }

    void show(WhyModel why) {
        if (!why.choices().equals(all)) {
            Optional<Decision> before = selected().map(row -> row.choice().decision());
            boolean samePlace = decisions(why.choices()).equals(decisions(all));
            all = why.choices();
            showAll &= samePlace;
            refresh(before);
        }
        note.setText(why.note());
        note.setVisible(!why.note().isEmpty());
    }

    private static Set<Decision> decisions(List<WhyModel.Row> rows) {
        return rows.stream().map(row -> row.choice().decision()).collect(Collectors.toSet());
    }

    /** @param wanted stays selected if it is still there: the same choice, not the same row */
    private void refresh(Optional<Decision> wanted) {
        rows.fireTableDataChanged();
        for (int row = 0; row < rows.getRowCount(); row++)
            if (wanted.equals(Optional.of(all.get(row).choice().decision()))) table.setRowSelectionInterval(row, row);
        fitCosts();
        more.setVisible(all.size() > rows.getRowCount());
        more.setText(words.text("why.showAll", all.size()));
        more.getAccessibleContext().setAccessibleName(more.getText());
    }

    /** The costs are as wide as they need to be, the choices have the rest. */
    private void fitCosts() {
        TableColumn costs = table.getColumnModel().getColumn(1);
        costs.setMaxWidth(Integer.MAX_VALUE);
        Tables.fit(table, 1);
        costs.setMaxWidth(costs.getPreferredWidth());
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
            return of.words(words);
        }
    }

    /** Numbers at the right, the plan's own choice in bold as well as in words; each cell says its column. */
    private final class Cells extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(of, value, selected, focused, row, column);
            setHorizontalAlignment(column == 1 ? SwingConstants.TRAILING : SwingConstants.LEADING);
            if (all.get(row).own()) setFont(getFont().deriveFont(Font.BOLD));
            setToolTipText(value.toString());
            getAccessibleContext().setAccessibleName(words.text("why.cell", rows.getColumnName(column), value));
            return this;
        }
    }
}
