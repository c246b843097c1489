package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import org.mantice.app.model.MelodyModel;
import org.mantice.app.words.Words;
import org.mantice.reading.PartInfo;

/** The parts of a file with the one that has the melody, why that one, and the grid of a MIDI file. */
final class MelodyPanel extends JPanel {
    private static final int MOST_ROWS = 8;

    private final transient Words words;
    private final transient MelodyModel model;
    private final JList<PartInfo> parts;

    /** @param chosen what to do when a part is chosen with the mouse */
    MelodyPanel(MelodyModel model, Words words, Runnable chosen) {
        super(new BorderLayout(0, UIScale.scale(10)));
        this.words = words;
        this.model = model;
        this.parts = new JList<>(model.parts().toArray(PartInfo[]::new));
        parts.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        parts.setSelectedIndex(model.taken());
        parts.setCellRenderer(new Names());
        parts.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) chosen.run();
            }
        });
        JPanel where =
                titled(words.text("window.melody.parts"), parts, model.parts().size());
        where.add(new JLabel(words.text("window.melody.reason", model.reason())), BorderLayout.PAGE_END);
        add(where);
        if (model.grid().isEmpty()) return;
        JList<String> grid = new JList<>(model.grid().toArray(String[]::new));
        add(titled(words.text("window.melody.grid"), grid, model.grid().size()), BorderLayout.PAGE_END);
    }

    private static JPanel titled(String title, JList<?> list, int rows) {
        JLabel label = new JLabel(title);
        label.setLabelFor(list);
        list.setVisibleRowCount(Math.max(2, Math.min(MOST_ROWS, rows)));
        list.getAccessibleContext().setAccessibleName(title);
        JPanel panel = new JPanel(new BorderLayout(0, UIScale.scale(4)));
        panel.add(label, BorderLayout.PAGE_START);
        panel.add(new JScrollPane(list));
        return panel;
    }

    JComponent first() {
        return parts;
    }

    Optional<PartInfo> choice() {
        return Optional.ofNullable(parts.getSelectedValue());
    }

    private String line(PartInfo part, boolean taken) {
        String line = words.text("window.melody.part", part.label(), part.notes(), part.chordSymbols());
        return taken ? words.text("window.melody.taken", line) : line;
    }

    private final class Names extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String line = value instanceof PartInfo part ? line(part, index == model.taken()) : "";
            return super.getListCellRendererComponent(list, line, index, selected, focused);
        }
    }
}
