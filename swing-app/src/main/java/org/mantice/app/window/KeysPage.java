package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.TableColumn;
import org.mantice.app.view.Actions;
import org.mantice.app.view.Command;
import org.mantice.app.view.MarkedLabel;
import org.mantice.app.words.Words;

/** Every command with its key and what it does, and the keys of the sheet and the tables. */
final class KeysPage extends JPanel {
    private static final int ROWS_WANTED = 26;

    private final transient List<Row> rows;

    /** A line of the page. */
    record Row(String place, String what, String keys, String hint) {
        String cell(int column) {
            return switch (column) {
                case 0 -> place;
                case 1 -> what;
                case 2 -> keys;
                default -> hint;
            };
        }
    }

    KeysPage(Words words, Actions actions) {
        super(new BorderLayout());
        this.rows = rows(words, actions);
        JTable table = new JTable(new Model(
                rows,
                List.of(
                        words.text("window.keys.place"),
                        words.text("window.keys.command"),
                        words.text("window.keys.key"),
                        words.text("window.keys.hint"))));
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.getTableHeader().setReorderingAllowed(false);
        table.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        table.getAccessibleContext().setAccessibleName(words.text("window.keys"));
        int width = 0;
        for (int column = 0; column < table.getColumnCount(); column++) width += fit(table, column);
        table.setPreferredScrollableViewportSize(
                new Dimension(width, Math.min(rows.size(), ROWS_WANTED) * table.getRowHeight()));
        add(new JScrollPane(table));
    }

    /** In the order of the menus, then what works in one place only. */
    static List<Row> rows(Words words, Actions actions) {
        List<Row> rows = new ArrayList<>();
        for (Command command : Command.values()) {
            Action action = actions.get(command);
            rows.add(new Row(
                    MarkedLabel.of(words.of("commands", command.group())).text(),
                    MarkedLabel.of(words.of("commands", command)).text(),
                    actions.keyWords(command),
                    (String) action.getValue(Action.SHORT_DESCRIPTION)));
        }
        String sheet = words.text("window.keys.sheet");
        rows.add(new Row(
                sheet, words.text("window.keys.along"), keys("LEFT", "RIGHT"), words.text("window.keys.along.hint")));
        rows.add(new Row(
                sheet, words.text("window.keys.across"), keys("UP", "DOWN"), words.text("window.keys.across.hint")));
        rows.add(new Row(
                sheet, words.text("window.keys.ends"), keys("HOME", "END"), words.text("window.keys.ends.hint")));
        rows.add(new Row(
                sheet,
                words.text("window.keys.lines"),
                keys("PAGE_UP", "PAGE_DOWN"),
                words.text("window.keys.lines.hint")));
        rows.add(new Row(sheet, words.text("window.keys.why"), keys("ENTER"), words.text("window.keys.why.hint")));
        rows.add(new Row(
                sheet,
                words.text("window.keys.here"),
                words(KeyStroke.getKeyStroke("shift F10")),
                words.text("window.keys.here.hint")));
        addChords(words, rows);
        String figures = words.text("window.keys.figures");
        rows.add(new Row(
                figures, words.text("window.keys.compare"), keys("SPACE"), words.text("window.keys.compare.hint")));
        rows.add(new Row(
                figures, words.text("window.keys.choose"), keys("ENTER"), words.text("window.keys.choose.hint")));
        String everywhere = words.text("window.keys.everywhere");
        rows.add(new Row(everywhere, words.text("window.keys.next"), keys("TAB"), words.text("window.keys.next.hint")));
        rows.add(
                new Row(everywhere, words.text("window.keys.other"), keys("F6"), words.text("window.keys.other.hint")));
        rows.add(new Row(
                everywhere, words.text("window.keys.border"), keys("F8"), words.text("window.keys.border.hint")));
        rows.add(new Row(everywhere, words.text("window.keys.menu"), keys("F10"), words.text("window.keys.menu.hint")));
        return List.copyOf(rows);
    }

    private static void addChords(Words words, List<Row> rows) {
        String chords = words.text("window.keys.chords");
        rows.add(new Row(
                chords,
                words.text("window.keys.type"),
                words.text("window.keys.type.keys"),
                words.text("window.keys.type.hint")));
        rows.add(new Row(
                chords, words.text("window.keys.typed"), keys("ENTER", "TAB"), words.text("window.keys.typed.hint")));
        rows.add(new Row(
                chords, words.text("window.keys.untyped"), keys("ESCAPE"), words.text("window.keys.untyped.hint")));
        rows.add(new Row(
                chords, words.text("window.keys.remove"), keys("DELETE"), words.text("window.keys.remove.hint")));
        rows.add(new Row(
                chords,
                words.text("window.keys.move"),
                words(KeyStroke.getKeyStroke("alt LEFT"), KeyStroke.getKeyStroke("alt RIGHT")),
                words.text("window.keys.move.hint")));
    }

    private static String words(KeyStroke... keys) {
        return Stream.of(keys).map(Actions::words).collect(Collectors.joining(", "));
    }

    private static String keys(String... names) {
        List<String> keys = new ArrayList<>();
        for (String name : names)
            keys.add(KeyEvent.getKeyText(KeyStroke.getKeyStroke(name).getKeyCode()));
        return String.join(", ", keys);
    }

    private static int fit(JTable table, int column) {
        int width = table.getTableHeader()
                .getDefaultRenderer()
                .getTableCellRendererComponent(table, table.getColumnName(column), false, false, -1, column)
                .getPreferredSize()
                .width;
        for (int row = 0; row < table.getRowCount(); row++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
            width = Math.max(width, cell.getPreferredSize().width);
        }
        TableColumn of = table.getColumnModel().getColumn(column);
        of.setPreferredWidth(width + UIScale.scale(12));
        return of.getPreferredWidth();
    }

    private static final class Model extends AbstractTableModel {
        private final transient List<Row> rows;
        private final List<String> titles;

        Model(List<Row> rows, List<String> titles) {
            this.rows = rows;
            this.titles = titles;
        }

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return titles.size();
        }

        @Override
        public String getColumnName(int column) {
            return titles.get(column);
        }

        @Override
        public String getValueAt(int row, int column) {
            return rows.get(row).cell(column);
        }
    }
}
