package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.mantice.app.model.FiguresModel;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.Words;

/**
 * The figures of all plans, a column a plan. Space or a click on the head or the first row puts a plan on the sheet or
 * takes it away; Enter or a click on the second row chooses it.
 */
public final class FiguresView extends JPanel {
    private static final int ROWS_WANTED = 9;

    private final transient PlannerModel model;
    private final transient Words words;
    private final FiguresTable figures;
    private final transient FigureCells cells;
    private final transient FigureCells.Head head;
    private final JTable table;
    private final JTable titles;
    private final JLabel note = new JLabel(" ");
    private transient Optional<PlannerState> before = Optional.empty();

    public FiguresView(PlannerModel model, Words words) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        this.figures = new FiguresTable(words);
        this.cells = new FigureCells(figures);
        this.head = new FigureCells.Head(figures);
        this.table = new JTable(figures);
        this.titles = new JTable(new Titles());
        setUpTable();
        setUpTitles();
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.setRowHeaderView(titles);
        scroll.setCorner(ScrollPaneConstants.UPPER_LEADING_CORNER, titles.getTableHeader());
        add(scroll);
        add(note, BorderLayout.PAGE_END);
        getAccessibleContext().setAccessibleName(words.text("figures.title"));
        model.addListener(this::show);
        show(model.state());
    }

    private void setUpTable() {
        Tables.walkCells(table);
        table.setDefaultRenderer(Object.class, cells);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.getAccessibleContext().setAccessibleName(words.text("figures.title"));
        table.getAccessibleContext().setAccessibleDescription(words.text("figures.help"));
        Tables.onKey(table, "SPACE", () -> toggle(table.getSelectedColumn()));
        Tables.onKey(table, "ENTER", () -> choose(table.getSelectedColumn()));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                int row = table.rowAtPoint(event.getPoint());
                int column = table.columnAtPoint(event.getPoint());
                if (row == FiguresTable.ON_SHEET) toggle(column);
                if (row == FiguresTable.CHOSEN) choose(column);
            }
        });
        table.getTableHeader().addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                toggle(table.columnAtPoint(event.getPoint()));
            }
        });
    }

    private void setUpTitles() {
        titles.setFocusable(false);
        titles.setSelectionModel(table.getSelectionModel());
        titles.getTableHeader().setReorderingAllowed(false);
        titles.getTableHeader().setResizingAllowed(false);
        titles.getAccessibleContext().setAccessibleName(words.text("figures.title"));
        titles.setDefaultRenderer(Object.class, new DefaultTableCellRenderer() {
            @Override
            public Component getTableCellRendererComponent(
                    JTable of, Object value, boolean selected, boolean focused, int row, int column) {
                super.getTableCellRendererComponent(of, value, selected, false, row, column);
                setToolTipText(figures.meaning(row));
                return this;
            }
        });
    }

    private void toggle(int column) {
        if (column < 0) return;
        FiguresModel.Column plan = figures.figures().columns().get(column);
        figures.figures()
                .toggled(plan.offer())
                .ifPresentOrElse(
                        model::compare, () -> say(words.text(plan.compared() ? "figures.atLeast" : "figures.atMost")));
    }

    private void choose(int column) {
        if (column >= 0) model.choose(figures.figures().columns().get(column).offer());
    }

    private void say(String text) {
        note.setText(text);
        note.getAccessibleContext().setAccessibleName(text);
    }

    private void show(PlannerState state) {
        boolean same = before.filter(last -> last.performance().equals(state.performance())
                        && last.offers().equals(state.offers())
                        && last.compared().equals(state.compared())
                        && last.chosen() == state.chosen()
                        && last.setup().accordion().equals(state.setup().accordion()))
                .isPresent();
        before = Optional.of(state);
        if (!same) showOther(state);
    }

    private void showOther(PlannerState state) {
        int row = table.getSelectedRow();
        int column = table.getSelectedColumn();
        boolean other = figures.show(FiguresModel.of(state, words, model.packs().providers()));
        ((AbstractTableModel) titles.getModel()).fireTableDataChanged();
        for (int i = 0; i < table.getColumnCount(); i++)
            table.getColumnModel().getColumn(i).setHeaderRenderer(head);
        fit();
        if (row < table.getRowCount() && column < table.getColumnCount()) Tables.select(table, row, column);
        table.getTableHeader().repaint();
        if (other) revalidate();
        say(words.text(figures.getRowCount() == 0 ? "figures.empty" : "figures.help"));
    }

    private void fit() {
        for (int i = 0; i < table.getColumnCount(); i++) {
            Tables.fit(table, i);
            table.getColumnModel()
                    .getColumn(i)
                    .setWidth(table.getColumnModel().getColumn(i).getPreferredWidth());
        }
        if (titles.getRowCount() > 0) Tables.fit(titles, 0);
        int width = titles.getColumnModel().getColumn(0).getPreferredWidth();
        titles.setPreferredScrollableViewportSize(new Dimension(width, titles.getPreferredSize().height));
        table.setPreferredScrollableViewportSize(
                new Dimension(table.getPreferredSize().width, ROWS_WANTED * table.getRowHeight()));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        // Null while the parent's constructor runs.
        if (cells == null) return;
        cells.updateUI();
        SwingUtilities.updateComponentTreeUI(head);
        SwingUtilities.invokeLater(this::fit);
    }

    /** The first column, which stays in view when the plans are scrolled. */
    private final class Titles extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return figures.getRowCount();
        }

        @Override
        public int getColumnCount() {
            return 1;
        }

        @Override
        public String getColumnName(int column) {
            return words.text("figures.title");
        }

        @Override
        public Object getValueAt(int row, int column) {
            return figures.title(row);
        }
    }
}
