package org.mantice.app.view;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.SwitchedOff;
import org.mantice.app.model.TasteModel;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;

/** The weights of the rules in four groups: drag one and the plans follow. */
public final class TasteView extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final transient RuleWords ruleWords;
    private final transient SwitchedOff switchedOff = new SwitchedOff();
    private final JTextField find = new JTextField(12);
    private final JLabel none;
    private final Map<String, WeightRow> rows = new HashMap<>();
    private final List<JPanel> groups = new ArrayList<>();
    private final TallPanel list = new TallPanel();
    private transient TasteModel shown;

    public TasteView(PlannerModel model, Words words, Actions actions) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        this.ruleWords = new RuleWords(model.packs().providers(), words.locale());
        this.none = new JLabel(words.text("taste.none"));
        this.shown = TasteModel.of(model.state(), model.packs(), ruleWords, words);
        for (TasteModel.Group group : shown.groups()) {
            JPanel panel = group(group);
            groups.add(panel);
            list.add(panel);
        }
        list.add(none);
        list.keepFocusInView();
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar()
                .setUnitIncrement(list.getFontMetrics(list.getFont()).getHeight() * 2);
        add(head(actions), BorderLayout.PAGE_START);
        add(scroll);
        getAccessibleContext().setAccessibleName(words.text("taste.title"));
        model.addListener(this::show);
        filter();
        switchedOff.remember(taste());
        follow();
    }

    private JPanel head(Actions actions) {
        JLabel label = new JLabel(words.text("taste.find"));
        label.setLabelFor(find);
        find.getAccessibleContext().setAccessibleName(words.text("taste.find"));
        find.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                filter();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                filter();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                filter();
            }
        });
        JButton plain = new JButton(words.text("taste.plain"));
        plain.setToolTipText(words.text("taste.plain.hint"));
        plain.getAccessibleContext().setAccessibleName(plain.getText());
        plain.addActionListener(event -> model.setTaste(Taste.PLAIN));
        JButton save = MenuLetters.leave(new JButton(actions.get(Command.SAVE_PLAYER)));
        save.getAccessibleContext().setAccessibleName(save.getText());
        JPanel head = new JPanel(new WrappingLayout(4));
        head.add(label);
        head.add(find);
        head.add(plain);
        head.add(save);
        return head;
    }

    private JPanel group(TasteModel.Group group) {
        JPanel panel = new TallPanel();
        panel.setBorder(BorderFactory.createTitledBorder(group.name()));
        if (!group.starts().isEmpty()) panel.add(starts(group));
        if (group.ruleSet() == RuleSet.FINGERING_SPAN || group.ruleSet() == RuleSet.JUMP_COST)
            panel.add(new WrappedText(words.text("taste.caution"), words.text("taste.caution")));
        for (TasteModel.Row row : group.rows()) {
            WeightRow weight = new WeightRow(row, words, this::weigh, this::switchRule);
            rows.put(row.ruleId(), weight);
            panel.add(weight);
        }
        return panel;
    }

    private JPanel starts(TasteModel.Group group) {
        JPanel line = new JPanel(new WrappingLayout(4));
        line.add(new JLabel(words.text("taste.start")));
        for (TasteModel.Start start : group.starts()) {
            JButton button = new JButton(start.name());
            button.setToolTipText(start.weights());
            button.getAccessibleContext().setAccessibleName(words.text("taste.start.name", group.name(), start.name()));
            button.getAccessibleContext().setAccessibleDescription(start.weights());
            button.addActionListener(event -> model.lean(start.leaning()));
            line.add(button);
        }
        return line;
    }

    private Taste taste() {
        return model.state().setup().player().taste();
    }

    /** A weight that does not change is not written down: a rule not named counts as usual. */
    private void weigh(String rule, int perMille, boolean stillChanging) {
        Taste now = taste();
        model.setTaste(now.perMille(rule) == perMille ? now : now.with(rule, perMille), stillChanging);
    }

    private void switchRule(String rule, boolean on) {
        model.setTaste(switchedOff.switched(taste(), rule, on));
    }

    private void filter() {
        boolean any = false;
        for (int i = 0; i < groups.size(); i++) {
            boolean some = false;
            for (TasteModel.Row row : shown.groups().get(i).rows()) {
                boolean found = row.matches(find.getText());
                weightOf(row).setVisible(found);
                some |= found;
            }
            groups.get(i).setVisible(some);
            any |= some;
        }
        none.setVisible(!any);
        list.revalidate();
    }

    private WeightRow weightOf(TasteModel.Row row) {
        return Objects.requireNonNull(rows.get(row.ruleId()));
    }

    private void show(PlannerState state) {
        boolean dragging = rows.values().stream().anyMatch(WeightRow::isChanging);
        if (!dragging) switchedOff.remember(taste());
        TasteModel taste = TasteModel.of(state, model.packs(), ruleWords, words);
        if (taste.equals(shown)) return;
        shown = taste;
        follow();
    }

    private void follow() {
        for (TasteModel.Group group : shown.groups())
            for (TasteModel.Row row : group.rows()) weightOf(row).show(row);
    }
}
