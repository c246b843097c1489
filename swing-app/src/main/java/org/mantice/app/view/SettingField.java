package org.mantice.app.view;

import java.util.OptionalInt;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import javax.swing.Timer;
import org.mantice.app.model.SetupModel;
import org.mantice.app.words.Words;

/**
 * A number that may be chosen: a spinner, and where something holds without a choice a check box that says what, and goes
 * back to it. Told of once the spinner rests.
 */
final class SettingField extends JPanel {
    /** How long a spinner must rest before its number counts, in milliseconds. */
    private static final int REST = 350;

    private final transient Words words;
    private final String title;
    private final transient Consumer<OptionalInt> chosen;
    private final JSpinner spinner;
    private final JLabel unit = new JLabel();
    private final JCheckBox otherwise = new JCheckBox();
    private final Timer rest;
    private boolean showing;

    /**
     * @param optional whether something holds without a choice
     * @param chosen takes the number, empty for none
     */
    SettingField(Words words, Title title, SpinnerNumberModel numbers, boolean optional, Consumer<OptionalInt> chosen) {
        super(WrappingLayout.together(3));
        this.words = words;
        this.title = title.text();
        this.chosen = chosen;
        this.spinner = new JSpinner(numbers);
        this.rest = new Timer(REST, event -> settle());
        rest.setRepeats(false);
        JLabel label = new JLabel(title.text());
        label.setLabelFor(spinner);
        setUpSpinner(title);
        add(label);
        add(spinner);
        add(unit);
        if (optional) add(otherwise);
        otherwise.addActionListener(event -> chosen.accept(otherwise.isSelected() ? OptionalInt.empty() : number()));
    }

    /** What a setting is called, and one phrase on what is counted and what is allowed. */
    record Title(String text, String hint) {}

    private void setUpSpinner(Title title) {
        JSpinner.NumberEditor editor = new JSpinner.NumberEditor(spinner, "0");
        spinner.setEditor(editor);
        JFormattedTextField field = editor.getTextField();
        for (JComponent each : new JComponent[] {spinner, field}) {
            each.getAccessibleContext().setAccessibleName(title.text());
            each.getAccessibleContext().setAccessibleDescription(title.hint());
            each.setToolTipText(title.hint());
        }
        spinner.addChangeListener(event -> {
            if (!showing) rest.restart();
        });
    }

    private OptionalInt number() {
        return OptionalInt.of((Integer) spinner.getValue());
    }

    /** Takes the number over without waiting any longer. */
    void settle() {
        rest.stop();
        chosen.accept(number());
    }

    /** Whether a number is waiting to be taken over. */
    boolean isWaiting() {
        return rest.isRunning();
    }

    JSpinner spinner() {
        return spinner;
    }

    void goTo() {
        ((JSpinner.DefaultEditor) spinner.getEditor()).getTextField().requestFocusInWindow();
    }

    JCheckBox otherwise() {
        return otherwise;
    }

    /** A number that is just being set stays. @param unit what is counted, or what results; may be empty */
    void show(SetupModel.Setting setting, String unit, boolean possible) {
        showing = true;
        if (!isWaiting() && possible) spinner.setValue(setting.value());
        showing = false;
        this.unit.setText(unit);
        this.unit.setVisible(!unit.isEmpty());
        otherwise.setText(setting.otherwise());
        otherwise.setSelected(!setting.chosen());
        otherwise.getAccessibleContext().setAccessibleName(words.text("setup.otherwise", title, setting.otherwise()));
        otherwise.setVisible(possible);
        spinner.setEnabled(possible);
    }
}
