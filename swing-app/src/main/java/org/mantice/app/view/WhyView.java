package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.datatransfer.StringSelection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import org.mantice.app.model.CostTree;
import org.mantice.app.model.Offer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.model.WhyModel;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.tune.PlacedChord;

/**
 * Why, and why not: what the selected place pays rule by rule, what else was possible there and what it would cost; to
 * take, lock and free it. Without a selection, what the chosen plan pays as a whole.
 */
public final class WhyView extends JPanel {
    private final transient PlannerModel model;
    private final transient TuneEditor editor;
    private final transient Words words;
    private final transient RuleWords rules;
    private final WrappedText heading;
    private final CostTreeView costs;
    private final WrappedText about;
    private final ChoicesTable choices;
    private final JPanel possible;
    private final List<JButton> holding;
    private final List<JButton> accepting;
    private final JSplitPane split;
    private final LocksPanel locks;
    private final JCheckBox everyTime;
    private final JLabel copied = new JLabel();
    /** Where the divider was when nothing was selected; 0 or less for nowhere yet. */
    private int divided;

    private transient Optional<Offer> explained = Optional.empty();
    private transient Optional<WhyModel> shown = Optional.empty();
    private transient Optional<CostTree> tree = Optional.empty();

    public WhyView(PlannerModel model, TuneEditor editor, Words words, Actions actions) {
        super(new BorderLayout());
        this.model = model;
        this.editor = editor;
        this.words = words;
        this.rules = new RuleWords(model.packs().providers(), words.locale());
        this.heading = new WrappedText("", words.text("why.title"));
        this.costs = new CostTreeView(words.text("why.costs"));
        this.about = new WrappedText("", words.text("why.about"));
        this.everyTime = new JCheckBox(words.text("why.everyTime"));
        this.choices = new ChoicesTable(words, this::take);
        this.locks = new LocksPanel(model, words, actions);
        this.possible = possible();
        this.holding = buttons(actions, List.of(Command.LOCK, Command.LOCK_EVERY_TIME, Command.FREE));
        this.accepting = buttons(actions, List.of(Command.ACCEPT_CHORD, Command.ACCEPT_CHORDS));
        this.split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, true, explanation(), possible);
        split.setResizeWeight(0.4);
        split.setBorder(BorderFactory.createEmptyBorder());
        split.getAccessibleContext().setAccessibleName(words.text("why.split"));
        add(head(), BorderLayout.PAGE_START);
        add(split);
        add(locks, BorderLayout.PAGE_END);
        getAccessibleContext().setAccessibleName(words.text("why.title"));
        model.addListener(this::show);
        editor.addListener(() -> show(model.state()));
        show(model.state());
    }

    private JPanel head() {
        JButton copy = button("why.copy", words.text("why.copy.hint"));
        copy.addActionListener(event -> copy());
        JPanel buttons = new JPanel(new WrappingLayout(4));
        holding.forEach(buttons::add);
        accepting.forEach(buttons::add);
        buttons.add(copy);
        buttons.add(copied);
        JPanel head = new JPanel(new BorderLayout());
        head.add(heading);
        head.add(buttons, BorderLayout.PAGE_END);
        return head;
    }

    private static List<JButton> buttons(Actions actions, List<Command> commands) {
        List<JButton> buttons = new ArrayList<>();
        for (Command command : commands) {
            JButton button = MenuLetters.leave(new JButton(actions.get(command)));
            button.getAccessibleContext().setAccessibleName(button.getText());
            buttons.add(button);
        }
        return List.copyOf(buttons);
    }

    private JButton button(String key, String hint) {
        JButton button = new JButton(words.text(key));
        button.setToolTipText(hint);
        button.getAccessibleContext().setAccessibleName(button.getText());
        return button;
    }

    private JPanel explanation() {
        costs.addTreeSelectionListener(event -> showAbout());
        JPanel panel = new JPanel(new BorderLayout());
        panel.add(new JScrollPane(costs));
        panel.add(about, BorderLayout.PAGE_END);
        return panel;
    }

    private JPanel possible() {
        JButton take = button("why.take", words.text("why.take.hint"));
        take.addActionListener(event -> choices.selected().ifPresent(this::take));
        take.setEnabled(false);
        choices.onSelection(() -> take.setEnabled(choices.selected().isPresent()));
        everyTime.setToolTipText(words.text("why.everyTime.hint"));
        everyTime.getAccessibleContext().setAccessibleName(words.text("why.everyTime"));
        JPanel buttons = new JPanel(new WrappingLayout(4));
        buttons.add(take);
        buttons.add(everyTime);
        JPanel panel = new JPanel(new BorderLayout());
        panel.add(choices);
        panel.add(buttons, BorderLayout.PAGE_END);
        return panel;
    }

    private void take(WhyModel.Row row) {
        model.set(row.choice(), everyTime.isSelected());
    }

    private void show(PlannerState state) {
        boolean ofChord = editor.selected().isPresent();
        WhyModel why = ofChord ? WhyModel.ofChord(state, editor, words) : WhyModel.of(state, rules, words);
        if (shown.filter(why::equals).isPresent() && !wholeIsStale(state)) return;
        shown = Optional.of(why);
        boolean asked = state.selection().isPresent();
        heading.setText(why.heading());
        copied.setText("");
        choices.show(why);
        locks.show(why);
        holding.forEach(button -> button.setVisible(asked));
        accepting.forEach(button -> button.setVisible(
                ofChord && editor.chord().filter(PlacedChord::proposed).isPresent()));
        showPossible(asked);
        if (asked || ofChord) {
            explained = Optional.empty();
            why.costs().ifPresentOrElse(this::showCosts, () -> say(why.note()));
        } else explainWhole(state, why);
    }

    /** The player's own division of the view comes back with it. */
    private void showPossible(boolean asked) {
        if (possible.isVisible() == asked) return;
        if (!asked) divided = split.getDividerLocation();
        possible.setVisible(asked);
        if (!asked) return;
        if (divided > 0) split.setDividerLocation(divided);
        else split.resetToPreferredSizes();
    }

    private boolean wholeIsStale(PlannerState state) {
        return state.selection().isEmpty() && editor.selected().isEmpty() && !explained.equals(state.chosenOffer());
    }

    private void explainWhole(PlannerState state, WhyModel why) {
        if (state.chosenOffer().isEmpty()) {
            explained = Optional.empty();
            say(why.heading());
            return;
        }
        if (!wholeIsStale(state)) return;
        explained = state.chosenOffer();
        say(words.text("why.working"));
        Offer offer = explained.get();
        model.explain(state.chosen(), explanation -> {
            if (!explained.filter(offer::equals).isPresent()) return;
            showCosts(CostTree.of(explanation, words.text("why.whole", offer.letter()), rules, words));
        });
    }

    private void say(String sentence) {
        tree = Optional.empty();
        costs.say(sentence);
        showAbout();
    }

    private void showCosts(CostTree found) {
        if (tree.filter(found::equals).isPresent()) return;
        tree = Optional.of(found);
        costs.show(found, model.state().selection().isPresent() ? 3 : 1);
        showAbout();
    }

    private void showAbout() {
        about.setText(costs.aboutSelected());
        about.setVisible(!about.getText().isEmpty());
    }

    /** What is explained as plain text. */
    String text() {
        return shown.map(why -> why.text(tree, words)).orElse("");
    }

    private void copy() {
        try {
            getToolkit().getSystemClipboard().setContents(new StringSelection(text()), null);
            copied.setText(words.text("why.copied"));
        } catch (IllegalStateException e) {
            copied.setText(words.text("why.notCopied"));
        }
    }
}
