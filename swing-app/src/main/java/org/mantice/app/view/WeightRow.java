package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.ObjIntConsumer;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;
import org.mantice.app.model.TasteModel;
import org.mantice.app.words.Words;

/** The weight of one rule: on or off, a slider up to four times its usual weight, the exact number. */
final class WeightRow extends JPanel {
    private static final int PER_MILLE_OF_PERCENT = 10;
    private static final int SLIDER_MOST = 400;
    private static final int SPINNER_MOST = 10_000;
    private static final int STEP = 10;

    private final transient Words words;
    private final transient TasteModel.Row first;
    private final JCheckBox on;
    private final JSlider slider = new JSlider(0, SLIDER_MOST);
    private final JSpinner number = new JSpinner(new SpinnerNumberModel(100, 0, SPINNER_MOST, STEP));
    private final JLabel state = new JLabel();
    private boolean following;

    /**
     * @param weigh told of a rule's new weight in per mille
     * @param switched told of a rule that is switched on or off
     */
    WeightRow(TasteModel.Row row, Words words, ObjIntConsumer<String> weigh, BiConsumer<String, Boolean> switched) {
        super(new BorderLayout());
        this.words = words;
        this.first = row;
        this.on = new JCheckBox(row.title());
        on.setToolTipText(row.about());
        on.getAccessibleContext().setAccessibleName(words.text("taste.on", row.title()));
        on.getAccessibleContext().setAccessibleDescription(row.about());
        slider.setMajorTickSpacing(100);
        slider.setPaintTicks(true);
        slider.setToolTipText(row.about());
        slider.getAccessibleContext().setAccessibleDescription(row.about());
        number.getAccessibleContext().setAccessibleName(words.text("taste.number", row.title()));
        JSpinner.NumberEditor editor = new JSpinner.NumberEditor(number, "0");
        editor.getTextField().setColumns(4);
        editor.getTextField().getAccessibleContext().setAccessibleName(words.text("taste.number", row.title()));
        number.setEditor(editor);
        on.addActionListener(event -> switched.accept(row.ruleId(), on.isSelected()));
        slider.addChangeListener(event -> {
            if (!following) weigh.accept(row.ruleId(), slider.getValue() * PER_MILLE_OF_PERCENT);
        });
        number.addChangeListener(event -> {
            if (!following) weigh.accept(row.ruleId(), (int) number.getValue() * PER_MILLE_OF_PERCENT);
        });
        JPanel head = new JPanel(new WrappingLayout(2));
        head.add(on);
        row.pack().map(JLabel::new).ifPresent(head::add);
        JPanel value = new JPanel(new WrappingLayout(2));
        value.add(number);
        value.add(new JLabel(words.text("taste.percent")));
        value.add(state);
        add(head, BorderLayout.PAGE_START);
        add(slider);
        add(value, BorderLayout.PAGE_END);
        FocusAdapter intoView = new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                scrollRectToVisible(new Rectangle(getSize()));
            }
        };
        for (JComponent each : List.of(on, slider, editor.getTextField())) each.addFocusListener(intoView);
    }

    /** A number that changes would like to be seen wherever it stands; it is shown when the player is at it. */
    @Override
    public void scrollRectToVisible(Rectangle wanted) {
        Component focused = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (focused != null && SwingUtilities.isDescendingFrom(focused, this)) super.scrollRectToVisible(wanted);
    }

    void show(TasteModel.Row row) {
        following = true;
        int percent = Math.round(row.perMille() / (float) PER_MILLE_OF_PERCENT);
        on.setSelected(row.perMille() > 0);
        if (!slider.getValueIsAdjusting()) slider.setValue(Math.min(SLIDER_MOST, percent));
        if ((int) number.getValue() != percent) number.setValue(percent);
        slider.getAccessibleContext().setAccessibleName(words.text("taste.slider", first.title(), percent));
        String changed =
                row.perMille() == 0 ? words.text("taste.off") : row.changed() ? words.text("taste.changed") : "";
        state.setText(changed.isEmpty() ? row.cost() : row.cost().isEmpty() ? changed : changed + " · " + row.cost());
        following = false;
    }
}
