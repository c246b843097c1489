package org.mantice.app.window;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.table.AbstractTableModel;
import org.mantice.app.model.BookModel;
import org.mantice.app.words.Words;

/** The tunes of a book below a field that leaves those with the words typed. The arrows walk them from the field too. */
final class BookPanel extends JPanel {
    private static final int ROWS = 16;
    private static final int[] WIDTHS = {60, 340, 60, 130};

    private final transient BookModel model;
    private final transient Words words;
    private final JTextField filter = new JTextField();
    private final JLabel count = new JLabel();
    private final Rows rows;
    private final JTable table;
    private boolean following;

    /** @param chosen what to do when a tune is chosen with the mouse */
    BookPanel(BookModel model, Words words, Runnable chosen) {
        super(new BorderLayout(0, UIScale.scale(6)));
        this.model = model;
        this.words = words;
        this.rows = new Rows();
        this.table = new JTable(rows);
        add(head(), BorderLayout.PAGE_START);
        add(new JScrollPane(table));
        dressTable(chosen);
        for (String key : new String[] {"UP", "DOWN", "PAGE_UP", "PAGE_DOWN"}) walk(key);
        walk("ctrl HOME");
        walk("ctrl END");
        filter.getDocument().addDocumentListener(new Typing());
        showRows();
    }

    private JPanel head() {
        JLabel label = new JLabel(words.text("window.book.filter"));
        label.setLabelFor(filter);
        filter.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        filter.getAccessibleContext().setAccessibleDescription(words.text("window.book.filter.hint"));
        JPanel head = new JPanel(new BorderLayout(UIScale.scale(8), 0));
        head.add(label, BorderLayout.LINE_START);
        head.add(filter);
        head.add(count, BorderLayout.LINE_END);
        return head;
    }

    private void dressTable(Runnable chosen) {
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        // Enter belongs to the dialog's button, not to the table.
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "none");
        table.getAccessibleContext().setAccessibleName(words.text("window.book.tunes"));
        int width = 0;
        for (int i = 0; i < WIDTHS.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(UIScale.scale(WIDTHS[i]));
            width += UIScale.scale(WIDTHS[i]);
        }
        table.setPreferredScrollableViewportSize(new Dimension(width, ROWS * table.getRowHeight()));
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!following && table.getSelectedRow() >= 0) model.select(table.getSelectedRow());
        });
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && table.rowAtPoint(event.getPoint()) >= 0) chosen.run();
            }
        });
    }

    /** Walks the tunes while the filter has the focus. */
    private void walk(String key) {
        filter.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        filter.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                switch (key) {
                    case "UP" -> model.move(-1);
                    case "DOWN" -> model.move(1);
                    case "PAGE_UP" -> model.move(1 - ROWS);
                    case "PAGE_DOWN" -> model.move(ROWS - 1);
                    case "ctrl HOME" -> model.select(0);
                    default -> model.select(model.size() - 1);
                }
                showSelected();
            }
        });
    }

    private void showRows() {
        following = true;
        rows.fireTableDataChanged();
        following = false;
        count.setText(words.text("window.book.count", model.size(), model.total()));
        showSelected();
    }

    private void showSelected() {
        following = true;
        int row = model.selected();
        if (row == BookModel.NONE) table.clearSelection();
        else {
            table.setRowSelectionInterval(row, row);
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
        following = false;
    }

    JTextField filter() {
        return filter;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        // A table not yet laid out cannot be scrolled.
        java.awt.EventQueue.invokeLater(this::showSelected);
    }

    private final class Typing implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            changed();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            changed();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            changed();
        }

        private void changed() {
            model.filter(filter.getText());
            showRows();
        }
    }

    private final class Rows extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return model.size();
        }

        @Override
        public int getColumnCount() {
            return WIDTHS.length;
        }

        @Override
        public String getColumnName(int column) {
            return switch (column) {
                case 0 -> words.text("window.book.number");
                case 1 -> words.text("window.book.title");
                case 2 -> words.text("window.book.meter");
                default -> words.text("window.book.key");
            };
        }

        @Override
        public String getValueAt(int row, int column) {
            return switch (column) {
                case 0 -> model.entry(row).number();
                case 1 -> model.entry(row).title();
                case 2 -> model.meter(row);
                default -> model.key(row);
            };
        }
    }
}
