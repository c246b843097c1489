package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.text.DecimalFormatSymbols;
import java.util.function.BiConsumer;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;
import org.mantice.app.model.TasteModel;
import org.mantice.app.words.Words;

/** The weight of one rule: on or off, a slider up to four times its usual weight, the exact number. */
final class WeightRow extends JPanel {
    /** Told of a rule's new weight. */
    interface Weigh {
        /** @param stillChanging as while it is dragged */
        void weigh(String ruleId, int perMille, boolean stillChanging);
    }

    private static final int PER_MILLE_OF_PERCENT = 10;
    private static final double MOST = 10_000;
    private static final double STEP = 10;
    private static final String FORMAT = "0.#";

    private final transient Words words;
    private final transient Weigh weigh;
    private final transient TasteModel.Row first;
    private final JCheckBox on;
    private final WeightSlider slider = new WeightSlider();
    private final JSpinner number = new JSpinner(new SpinnerNumberModel(100.0, 0.0, MOST, STEP));
    private final JLabel state = new JLabel();
    private int perMille;
    private boolean following;

    /** @param switched told of a rule that is switched on or off */
    WeightRow(TasteModel.Row row, Words words, Weigh weigh, BiConsumer<String, Boolean> switched) {
        super(new BorderLayout());
        this.words = words;
        this.weigh = weigh;
        this.first = row;
        this.on = new JCheckBox(row.title());
        on.setToolTipText(row.about());
        on.getAccessibleContext().setAccessibleName(words.text("taste.on", row.title()));
        on.addActionListener(event -> switched.accept(row.ruleId(), on.isSelected()));
        slider.setToolTipText(row.about());
        slider.addChangeListener(event -> slid());
        setUpNumber();
        JPanel head = new JPanel(new WrappingLayout(4, 2));
        head.add(on);
        head.add(state);
        row.pack().map(JLabel::new).ifPresent(head::add);
        JPanel exact = new JPanel(new WrappingLayout(2));
        exact.add(number);
        exact.add(new JLabel(words.text("taste.percent")));
        add(head, BorderLayout.PAGE_START);
        add(slider);
        add(exact, BorderLayout.LINE_END);
    }

    private void setUpNumber() {
        String name = words.text("taste.number", first.title());
        JSpinner.NumberEditor editor = new JSpinner.NumberEditor(number, FORMAT);
        editor.getFormat().setDecimalFormatSymbols(DecimalFormatSymbols.getInstance(words.locale()));
        editor.getTextField().setColumns(FORMAT.length() + 2);
        editor.getTextField().getAccessibleContext().setAccessibleName(name);
        number.setEditor(editor);
        number.setToolTipText(first.about());
        number.getAccessibleContext().setAccessibleName(name);
        number.addChangeListener(event -> {
            if (following) return;
            double percent = ((Number) number.getValue()).doubleValue();
            weigh.weigh(first.ruleId(), (int) Math.round(percent * PER_MILLE_OF_PERCENT), false);
        });
    }

    /** A slider that was let go where it stood, or that stands at its end for a larger weight, weighs nothing anew. */
    private void slid() {
        if (following) return;
        boolean moved = slider.getValue() != onSlider(perMille);
        weigh.weigh(first.ruleId(), moved ? slider.percent() * PER_MILLE_OF_PERCENT : perMille, isChanging());
        if (!isChanging()) follow(() -> slider.setValue(onSlider(perMille)));
    }

    /** Whether the weight is being dragged. */
    boolean isChanging() {
        return slider.getValueIsAdjusting();
    }

    private static int onSlider(int perMille) {
        return Math.min(WeightSlider.MOST_PERCENT, Math.round(perMille / (float) PER_MILLE_OF_PERCENT));
    }

    /** A number that changes would like to be seen wherever it stands; it is shown when the player is at it. */
    @Override
    public void scrollRectToVisible(Rectangle wanted) {
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (focused != null && SwingUtilities.isDescendingFrom(focused, this)) super.scrollRectToVisible(wanted);
    }

    void show(TasteModel.Row row) {
        perMille = row.perMille();
        String percent = TasteModel.percent(perMille, words);
        follow(() -> {
            on.setSelected(perMille > 0);
            if (!isChanging()) slider.setValue(onSlider(perMille));
            number.setValue(perMille / (double) PER_MILLE_OF_PERCENT);
        });
        String name = words.text("taste.slider", first.title(), percent);
        String about = row.state().isEmpty() ? row.about() : row.state() + ". " + row.about();
        slider.getAccessibleContext().setAccessibleName(name);
        slider.getAccessibleContext().setAccessibleDescription(about);
        on.getAccessibleContext().setAccessibleDescription(about);
        state.setText(row.state().isEmpty() ? "" : "· " + row.state());
    }

    /** Shows what the model says, which is no news to it. */
    private void follow(Runnable change) {
        following = true;
        change.run();
        following = false;
    }
}
