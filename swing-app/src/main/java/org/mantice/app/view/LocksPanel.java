package org.mantice.app.view;

import java.awt.BorderLayout;
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

/** All that the player has locked; frees one or all. */
final class LocksPanel extends JPanel {
    private final DefaultListModel<WhyModel.LockRow> rows = new DefaultListModel<>();
    private final JList<WhyModel.LockRow> list = new JList<>(rows);
    private final JLabel title;
    private final transient Words words;
    private final JButton free;

    LocksPanel(PlannerModel model, Words words, Actions actions) {
        super(new BorderLayout());
        this.words = words;
        this.title = new JLabel(words.text("why.noLocks"));
        title.setLabelFor(list);
        add(title, BorderLayout.PAGE_START);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(3);
        list.getAccessibleContext().setAccessibleName(words.text("why.locks"));
        add(new JScrollPane(list));
        free = new JButton(words.text("why.free"));
        free.setToolTipText(words.text("why.free.hint"));
        free.getAccessibleContext().setAccessibleName(free.getText());
        free.setEnabled(false);
        free.addActionListener(event -> {
            WhyModel.LockRow row = list.getSelectedValue();
            if (row != null) model.free(row.lock());
        });
        list.addListSelectionListener(event -> free.setEnabled(list.getSelectedIndex() >= 0));
        JButton all = new JButton(actions.get(Command.FREE_ALL));
        all.getAccessibleContext().setAccessibleName(all.getText());
        JPanel buttons = new JPanel(new WrappingLayout(4));
        buttons.add(free);
        buttons.add(all);
        add(buttons, BorderLayout.PAGE_END);
    }

    void show(WhyModel why) {
        int selected = list.getSelectedIndex();
        rows.clear();
        rows.addAll(why.locks());
        if (selected >= 0 && selected < rows.size()) list.setSelectedIndex(selected);
        title.setText(words.text(rows.isEmpty() ? "why.noLocks" : "why.locks"));
    }
}
