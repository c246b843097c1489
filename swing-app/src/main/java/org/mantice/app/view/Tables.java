package org.mantice.app.view;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import javax.swing.table.TableModel;

/** What all our tables have in common. */
final class Tables {
    /** More rows than this are not measured. */
    private static final int MOST_MEASURED = 200;

    private Tables() {}

    /** A table whose columns fill the view where it is wide enough, and which is scrolled sideways where it is not. */
    static JTable scrolledSideways(TableModel model) {
        return new JTable(model) {
            @Override
            public boolean getScrollableTracksViewportWidth() {
                return getParent() == null
                        || getPreferredSize().width < getParent().getWidth();
            }
        };
    }

    /** One cell at a time by the arrow keys; the tabulator leaves the table. */
    static void walkCells(JTable table) {
        table.setCellSelectionEnabled(true);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getColumnModel().getSelectionModel().setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        leaveWithTab(table);
        table.getTableHeader().setReorderingAllowed(false);
    }

    /** The tabulator goes to the next component, not to the next cell. */
    static void leaveWithTab(JTable table) {
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    }

    /** @param key as {@link KeyStroke#getKeyStroke(String)} reads it */
    static void onKey(JComponent within, String key, Runnable work) {
        within.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(key), "own " + key);
        within.getActionMap().put("own " + key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }

    /** Makes a column as wide as its header and its cells want. */
    static void fit(JTable table, int column) {
        TableColumn of = table.getColumnModel().getColumn(column);
        TableCellRenderer header =
                of.getHeaderRenderer() == null ? table.getTableHeader().getDefaultRenderer() : of.getHeaderRenderer();
        int width = header.getTableCellRendererComponent(table, of.getHeaderValue(), false, false, -1, column)
                .getPreferredSize()
                .width;
        for (int row = 0; row < Math.min(MOST_MEASURED, table.getRowCount()); row++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
            width = Math.max(width, cell.getPreferredSize().width);
        }
        of.setPreferredWidth(width
                + 2 * table.getIntercellSpacing().width
                + table.getFontMetrics(table.getFont()).charWidth('m'));
    }

    /** Selects a cell and shows it, or nothing at -1. */
    static void select(JTable table, int row, int column) {
        if (row < 0 || column < 0) table.clearSelection();
        else table.changeSelection(row, column, false, false);
    }

    /** Selects a whole row and shows it, or none at -1. */
    static void selectRow(JTable table, int row) {
        if (row < 0) table.clearSelection();
        else if (table.getSelectedRow() != row) {
            table.setRowSelectionInterval(row, row);
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
    }

    /** What is selected is in view when the table's view is shown or gets another size. */
    static void keepInView(JTable table, JComponent view) {
        view.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentShown(ComponentEvent event) {
                showSelected();
            }

            @Override
            public void componentResized(ComponentEvent event) {
                showSelected();
            }

            private void showSelected() {
                int row = table.getSelectedRow();
                int column = Math.max(0, table.getSelectedColumn());
                // After the layout that the event tells of.
                if (row >= 0)
                    SwingUtilities.invokeLater(() -> table.scrollRectToVisible(table.getCellRect(row, column, true)));
            }
        });
    }
}
