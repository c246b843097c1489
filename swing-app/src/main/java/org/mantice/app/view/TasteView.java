package org.mantice.app.view;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
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
    private final transient RuleWords rules;
    private final transient SwitchedOff switchedOff = new SwitchedOff();
    private final JTextField find = new JTextField(12);
    private final JLabel none;
    private final Map<String, WeightRow> rows = new HashMap<>();
    private final List<JPanel> groups = new ArrayList<>();
    private final JPanel list = new TallPanel();
    private transient TasteModel shown;

    public TasteView(PlannerModel model, Words words, Actions actions) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        this.rules = new RuleWords(model.packs().providers(), words.locale());
        this.none = new JLabel(words.text("taste.none"));
        this.shown = TasteModel.of(model.state(), model.packs(), rules, words);
        for (TasteModel.Group group : shown.groups()) {
            JPanel panel = group(group);
            groups.add(panel);
            list.add(panel);
        }
        list.add(none);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar()
                .setUnitIncrement(list.getFontMetrics(list.getFont()).getHeight() * 2);
        add(head(actions), BorderLayout.PAGE_START);
        add(scroll);
        getAccessibleContext().setAccessibleName(words.text("taste.title"));
        model.addListener(this::show);
        filter();
        show(model.state());
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
        JButton save = new JButton(actions.get(Command.SAVE_PLAYER));
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
        if (group.ruleSet() == RuleSet.FINGERING_SPAN)
            panel.add(new WrappedText(words.text("taste.caution"), words.text("taste.caution")));
        for (TasteModel.Row row : group.rows()) {
            WeightRow weight = new WeightRow(
                    row, words, (rule, perMille) -> model.setTaste(taste().with(rule, perMille)), this::switchRule);
            rows.put(row.ruleId(), weight);
            panel.add(weight);
        }
        return panel;
    }

    private JPanel starts(TasteModel.Group group) {
        JComboBox<Object> combo = new JComboBox<>();
        combo.addItem(words.text("taste.start.pick"));
        group.starts().forEach(combo::addItem);
        combo.getAccessibleContext().setAccessibleName(words.text("taste.start.name", group.name()));
        combo.addActionListener(event -> {
            if (!(combo.getSelectedItem() instanceof TasteModel.Start start)) return;
            combo.setSelectedIndex(0);
            model.lean(start.leaning());
        });
        JLabel label = new JLabel(words.text("taste.start"));
        label.setLabelFor(combo);
        JPanel line = new JPanel(new WrappingLayout(4));
        line.add(label);
        line.add(combo);
        return line;
    }

    private Taste taste() {
        return model.state().setup().player().taste();
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
        TasteModel taste = TasteModel.of(state, model.packs(), rules, words);
        shown = taste;
        for (TasteModel.Group group : taste.groups())
            for (TasteModel.Row row : group.rows()) weightOf(row).show(row);
    }
}
