package org.mantice.app.view;

import java.awt.Component;
import java.awt.Font;
import java.awt.GridLayout;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import org.mantice.app.model.FiguresModel;
import org.mantice.app.text.FigureRow;

/** Paints the cells and heads of the table of figures, and speaks them. */
final class FigureCells implements TableCellRenderer {
    private final FiguresTable table;
    private final DefaultTableCellRenderer figure = new DefaultTableCellRenderer();
    private final JToggleButton onSheet = new JCheckBox();
    private final JToggleButton chosen = new JRadioButton();

    FigureCells(FiguresTable table) {
        this.table = table;
        figure.setHorizontalAlignment(SwingConstants.TRAILING);
        for (JToggleButton button : new JToggleButton[] {onSheet, chosen}) {
            button.setHorizontalAlignment(SwingConstants.TRAILING);
            button.setHorizontalTextPosition(SwingConstants.LEADING);
            button.setOpaque(true);
        }
    }

    /** After a change of the look. */
    void updateUI() {
        figure.updateUI();
        onSheet.updateUI();
        chosen.updateUI();
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable of, Object value, boolean selected, boolean focused, int row, int column) {
        JComponent cell = row == FiguresTable.ON_SHEET
                ? toggle(onSheet, of, selected, row, column)
                : row == FiguresTable.CHOSEN
                        ? toggle(chosen, of, selected, row, column)
                        : figure(of, value, selected, focused, row, column);
        cell.getAccessibleContext().setAccessibleName(table.spoken(row, column));
        cell.getAccessibleContext().setAccessibleDescription(table.meaning(row));
        cell.setToolTipText(table.meaning(row));
        return cell;
    }

    private JToggleButton toggle(JToggleButton button, JTable of, boolean selected, int row, int column) {
        button.setText(table.getValueAt(row, column));
        button.setSelected(table.isOn(row, column));
        button.setFont(of.getFont());
        button.setForeground(selected ? of.getSelectionForeground() : of.getForeground());
        button.setBackground(selected ? of.getSelectionBackground() : of.getBackground());
        return button;
    }

    private DefaultTableCellRenderer figure(
            JTable of, Object value, boolean selected, boolean focused, int row, int column) {
        figure.getTableCellRendererComponent(of, value, selected, focused, row, column);
        boolean best = table.rank(row, column) == FigureRow.Standing.BEST;
        figure.setFont(best ? of.getFont().deriveFont(Font.BOLD) : of.getFont());
        return figure;
    }

    /** The head of a plan's column: mark and label, cost, proven or not and whether it is chosen. */
    static final class Head extends JPanel implements TableCellRenderer {
        private final transient FiguresTable figures;
        private final JLabel name = new JLabel();
        private final JLabel cost = new JLabel();
        private final JLabel proven = new JLabel();

        Head(FiguresTable figures) {
            super(new GridLayout(0, 1));
            this.figures = figures;
            for (JLabel line : new JLabel[] {name, cost, proven}) {
                line.setHorizontalAlignment(SwingConstants.TRAILING);
                add(line);
            }
        }

        /** Lays out at once: a renderer may be painted without a window. */
        @Override
        public void setBounds(int x, int y, int width, int height) {
            super.setBounds(x, y, width, height);
            doLayout();
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            FiguresModel.Column plan = figures.figures().columns().get(column);
            Font font = UIManager.getFont("TableHeader.font");
            name.setText(plan.mark() + "  " + plan.label());
            name.setFont(font.deriveFont(Font.BOLD));
            String chosen = plan.chosen() ? " · " + figures.getValueAt(FiguresTable.CHOSEN, column) : "";
            cost.setText(plan.cost() + chosen);
            cost.setFont(font);
            proven.setText(plan.proven());
            proven.setFont(font);
            for (JLabel line : new JLabel[] {name, cost, proven})
                line.setForeground(UIManager.getColor("TableHeader.foreground"));
            setBackground(UIManager.getColor("TableHeader.background"));
            setBorder(UIManager.getBorder("TableHeader.cellBorder"));
            setToolTipText(figures.getColumnName(column));
            getAccessibleContext().setAccessibleName(figures.getColumnName(column));
            return this;
        }
    }
}
