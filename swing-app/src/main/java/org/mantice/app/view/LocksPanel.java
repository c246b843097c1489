package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.WhyModel;
import org.mantice.app.words.Words;

/** All that the player has locked; frees one or all. Not shown while nothing is locked. */
final class LocksPanel extends JPanel {
    private static final int MOST_ROWS = 4;

    private final DefaultListModel<WhyModel.LockRow> rows = new DefaultListModel<>();
    private final JList<WhyModel.LockRow> list = new JList<>(rows);
    private final JButton free;

    LocksPanel(PlannerModel model, Words words, Actions actions) {
        super(new BorderLayout());
        JLabel title = new JLabel(words.text("why.locks"));
        title.setLabelFor(list);
        title.setBorder(BorderFactory.createEmptyBorder(0, UIScale.scale(4), 0, UIScale.scale(4)));
        add(title, BorderLayout.PAGE_START);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(words.text("why.locks"));
        add(new JScrollPane(list));
        free = new JButton(words.text("why.free"));
        free.setToolTipText(words.text("why.free.hint"));
        free.getAccessibleContext().setAccessibleName(free.getText());
        free.setEnabled(false);
        free.addActionListener(event -> free(model));
        Tables.onKey(list, "DELETE", () -> free(model));
        list.addListSelectionListener(event -> free.setEnabled(list.getSelectedIndex() >= 0));
        JButton all = MenuLetters.leave(new JButton(actions.get(Command.FREE_ALL)));
        all.getAccessibleContext().setAccessibleName(all.getText());
        JPanel buttons = new JPanel(new WrappingLayout(4));
        buttons.add(free);
        buttons.add(all);
        add(buttons, BorderLayout.PAGE_END);
    }

    private void free(PlannerModel model) {
        WhyModel.LockRow row = list.getSelectedValue();
        if (row != null) model.free(row.lock());
    }

    void show(WhyModel why) {
        if (!List.of(rows.toArray()).equals(why.locks())) {
            WhyModel.LockRow selected = list.getSelectedValue();
            rows.clear();
            rows.addAll(why.locks());
            list.setSelectedValue(selected, true);
            list.setVisibleRowCount(Math.min(MOST_ROWS, rows.size()));
        }
        setVisible(!rows.isEmpty());
    }
}
