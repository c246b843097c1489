package org.mantice.app.view;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.mantice.app.model.CostTree;
import org.mantice.app.model.Offer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.plan.Explanation;

/** What one plan pays more for than another, rule by rule, the largest first. */
final class CostsPanel extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final JComboBox<String> first = new JComboBox<>();
    private final JComboBox<String> second = new JComboBox<>();
    private final CostTreeView tree;
    private transient List<Offer> offers = List.of();
    private transient List<Integer> compared = List.of();
    private boolean filling;
    /** Answers to older questions are dropped. */
    private int asked;

    CostsPanel(PlannerModel model, Words words) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        JPanel question = new JPanel(new WrappingLayout(4, 3));
        question.add(labelled("differences.costs", first, "differences.costs.first"));
        question.add(first);
        question.add(labelled("differences.costs.than", second, "differences.costs.second"));
        question.add(second);
        add(question, BorderLayout.PAGE_START);
        this.tree = new CostTreeView(words.text("differences.costs.tree"));
        add(new JScrollPane(tree));
        first.addActionListener(event -> ask());
        second.addActionListener(event -> ask());
        say(words.text("differences.onePlan"));
    }

    private JLabel labelled(String text, JComboBox<String> combo, String name) {
        JLabel label = new JLabel(words.text(text));
        label.setLabelFor(combo);
        combo.getAccessibleContext().setAccessibleName(words.text(name));
        return label;
    }

    /** Asks anew if other plans are compared than before. */
    void show(PlannerState state) {
        if (state.offers().equals(offers) && state.compared().equals(compared)) return;
        offers = state.offers();
        compared = state.compared();
        filling = true;
        for (JComboBox<String> combo : List.of(first, second)) {
            combo.removeAllItems();
            for (int i = 0; i < compared.size(); i++)
                combo.addItem(PlanWords.mark(offers.get(compared.get(i)).letter(), i));
            combo.setEnabled(compared.size() > 1);
        }
        if (compared.size() > 1) {
            first.setSelectedIndex(1);
            second.setSelectedIndex(0);
        }
        filling = false;
        ask();
    }

    private void ask() {
        if (filling) return;
        int question = ++asked;
        if (compared.size() < 2) {
            say(words.text(compared.isEmpty() ? "differences.noPlans" : "differences.onePlan"));
            return;
        }
        if (first.getSelectedIndex() == second.getSelectedIndex()) {
            say(words.text("differences.costs.same"));
            return;
        }
        say(words.text("differences.costs.waiting"));
        model.explainDifference(
                compared.get(first.getSelectedIndex()), compared.get(second.getSelectedIndex()), explained -> {
                    if (question == asked) show(explained);
                });
    }

    private void show(Explanation explained) {
        String title = words.text("differences.costs.root", first.getSelectedItem(), second.getSelectedItem());
        RuleWords rules = new RuleWords(model.packs().providers(), words.locale());
        tree.show(CostTree.ofDifference(explained, title, rules, words), 2);
    }

    private void say(String text) {
        tree.say(text);
    }
}
