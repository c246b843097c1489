package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.datatransfer.StringSelection;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import org.mantice.app.model.CostTree;
import org.mantice.app.model.Offer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.WhyModel;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;

/**
 * Why, and why not: what the selected place pays rule by rule, what else was possible there and what it would cost; to
 * take, lock and free it. Without a selection, what the chosen plan pays as a whole.
 */
public final class WhyView extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final transient RuleWords rules;
    private final WrappedText heading;
    private final CostTreeView costs;
    private final ChoicesTable choices;
    private final LocksPanel locks;
    private final JCheckBox everyTime;
    private transient Optional<Offer> explained = Optional.empty();
    private transient Optional<WhyModel> shown = Optional.empty();
    private transient Optional<CostTree> tree = Optional.empty();

    public WhyView(PlannerModel model, Words words, Actions actions) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        this.rules = new RuleWords(model.packs().providers(), words.locale());
        this.heading = new WrappedText("", words.text("why.title"));
        this.costs = new CostTreeView(words.text("why.costs"));
        this.everyTime = new JCheckBox(words.text("why.everyTime"));
        this.choices = new ChoicesTable(words, this::take);
        this.locks = new LocksPanel(model, words, actions);
        add(head(), BorderLayout.PAGE_START);
        JSplitPane upper =
                new JSplitPane(JSplitPane.VERTICAL_SPLIT, new JScrollPane(costs), choicesPanel(actions));
        upper.setResizeWeight(0.5);
        upper.setBorder(BorderFactory.createEmptyBorder());
        JSplitPane whole = new JSplitPane(JSplitPane.VERTICAL_SPLIT, upper, locks);
        whole.setResizeWeight(0.8);
        whole.setBorder(BorderFactory.createEmptyBorder());
        add(whole);
        getAccessibleContext().setAccessibleName(words.text("why.title"));
        model.addListener(this::show);
        show(model.state());
    }

    private JPanel head() {
        JButton copy = new JButton(words.text("why.copy"));
        copy.setToolTipText(words.text("why.copy.hint"));
        copy.getAccessibleContext().setAccessibleName(copy.getText());
        copy.addActionListener(event -> copy());
        JPanel buttons = new JPanel(new WrappingLayout(4));
        buttons.add(copy);
        JPanel head = new JPanel(new BorderLayout());
        head.add(heading);
        head.add(buttons, BorderLayout.PAGE_END);
        return head;
    }

    private JPanel choicesPanel(Actions actions) {
        JButton take = new JButton(words.text("why.take"));
        take.setToolTipText(words.text("why.take.hint"));
        take.getAccessibleContext().setAccessibleName(take.getText());
        take.addActionListener(event -> choices.selected().ifPresent(this::take));
        take.setEnabled(false);
        choices.onSelection(() -> take.setEnabled(choices.selected().isPresent()));
        everyTime.setToolTipText(words.text("why.everyTime.hint"));
        everyTime.getAccessibleContext().setAccessibleName(words.text("why.everyTime"));
        JPanel buttons = new JPanel(new WrappingLayout(4));
        buttons.add(take);
        buttons.add(everyTime);
        for (Command command : List.of(Command.LOCK, Command.LOCK_EVERY_TIME, Command.FREE)) {
            JButton button = new JButton(actions.get(command));
            button.getAccessibleContext().setAccessibleName(button.getText());
            buttons.add(button);
        }
        JPanel panel = new JPanel(new BorderLayout());
        panel.add(choices);
        panel.add(buttons, BorderLayout.PAGE_END);
        return panel;
    }

    private void take(WhyModel.Row row) {
        model.set(row.choice(), everyTime.isSelected());
    }

    private void show(PlannerState state) {
        WhyModel why = WhyModel.of(state, rules, words);
        if (shown.filter(why::equals).isPresent() && !wholeIsStale(state)) return;
        shown = Optional.of(why);
        heading.setText(why.heading());
        choices.show(why);
        locks.show(why);
        if (state.selection().isPresent()) {
            explained = Optional.empty();
            why.costs().ifPresentOrElse(this::showCosts, () -> costs.say(words.text("why.working")));
        } else explainWhole(state);
    }

    private boolean wholeIsStale(PlannerState state) {
        return state.selection().isEmpty() && !explained.equals(state.chosenOffer());
    }

    private void explainWhole(PlannerState state) {
        if (state.chosenOffer().isEmpty()) {
            explained = Optional.empty();
            tree = Optional.empty();
            costs.say(words.text("why.noPlans"));
            return;
        }
        if (!wholeIsStale(state)) return;
        explained = state.chosenOffer();
        costs.say(words.text("why.working"));
        Offer offer = explained.get();
        model.explain(state.chosen(), explanation -> {
            if (!explained.filter(offer::equals).isPresent()) return;
            showCosts(CostTree.of(explanation, words.text("why.whole", offer.letter()), rules, words));
        });
    }

    private void showCosts(CostTree found) {
        tree = Optional.of(found);
        costs.show(found, model.state().selection().isPresent() ? 3 : 1);
    }

    private void copy() {
        StringBuilder text = new StringBuilder(heading.getText()).append('\n');
        tree.ifPresent(found -> text.append(found.lines()));
        shown.ifPresent(why -> {
            for (WhyModel.Row row : why.choices())
                text.append(row.extra()).append("  ").append(row.value()).append('\n');
        });
        getToolkit().getSystemClipboard().setContents(new StringSelection(text.toString()), null);
    }
}
