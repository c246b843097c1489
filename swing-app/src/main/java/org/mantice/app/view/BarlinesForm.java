package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.words.Words;
import org.mantice.tune.Barlines;

/** Repeats, endings, signs and jumps of one measure: what stands at its beginning, and what at its end. */
final class BarlinesForm extends EditForm {
    private static final int MOST_TIMES = 100;

    private final transient TuneEditor editor;
    private final transient Words words;
    private final JCheckBox repeatStart;
    private final JTextField ending = new JTextField(8);
    private final JCheckBox segno;
    private final JCheckBox coda;
    private final JCheckBox repeatEnd;
    private final JSpinner times = new JSpinner(new SpinnerNumberModel(2, 2, MOST_TIMES, 1));
    private final JCheckBox afterJump;
    private final JCheckBox endingStop;
    private final JCheckBox toCoda;
    private final JCheckBox fine;
    private final JCheckBox doubleBar;
    private final JComboBox<String> jump = new JComboBox<>();

    BarlinesForm(Barlines now, TuneEditor editor, Words words) {
        this.editor = editor;
        this.words = words;
        this.repeatStart = box("edit.barlines.repeatStart", now.repeatStart());
        this.segno = box("edit.barlines.segno", now.segno());
        this.coda = box("edit.barlines.coda", now.coda());
        this.repeatEnd = box("edit.barlines.repeatEnd", now.repeatEnd().isPresent());
        this.afterJump = box(
                "edit.barlines.afterJump",
                now.repeatAfterJump() || now.repeatEnd().isEmpty());
        this.endingStop = box("edit.barlines.endingStop", now.endingStop());
        this.toCoda = box("edit.barlines.toCoda", now.toCoda());
        this.fine = box("edit.barlines.fine", now.fine());
        this.doubleBar = box("edit.barlines.doubleBar", now.doubleBar());
        ending.setText(now.endingStart().stream().map(String::valueOf).collect(Collectors.joining(", ")));
        now.repeatEnd().ifPresent(times::setValue);
        jump.addItem(words.text("edit.barlines.noJump"));
        jump.addItem(words.text("edit.barlines.daCapo"));
        jump.addItem(words.text("edit.barlines.dalSegno"));
        now.jump().ifPresent(which -> jump.setSelectedIndex(1 + which.ordinal()));
        JPanel sides = new JPanel();
        sides.setLayout(new BoxLayout(sides, BoxLayout.LINE_AXIS));
        sides.add(side(
                "edit.barlines.beginning",
                List.of(repeatStart, labelled("edit.barlines.ending", ending), segno, coda)));
        sides.add(side(
                "edit.barlines.end",
                List.of(
                        repeatEnd,
                        labelled("edit.barlines.times", times),
                        afterJump,
                        endingStop,
                        toCoda,
                        fine,
                        labelled("edit.barlines.jump", jump),
                        doubleBar)));
        add(sides);
        repeatEnd.addActionListener(event -> follow());
        follow();
    }

    /** How often and whether after a jump means something for a repeat only. */
    private void follow() {
        times.setEnabled(repeatEnd.isSelected());
        afterJump.setEnabled(repeatEnd.isSelected());
    }

    private JCheckBox box(String key, boolean on) {
        MarkedLabel label = MarkedLabel.of(words.text(key));
        JCheckBox box = new JCheckBox(label.text(), on);
        label.mnemonic().ifPresent(box::setMnemonic);
        box.getAccessibleContext().setAccessibleName(label.text());
        return box;
    }

    private JPanel labelled(String key, JComponent field) {
        String text = words.text(key);
        JLabel label = new JLabel(text);
        label.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(text);
        if (field instanceof JSpinner spinner)
            ((JSpinner.DefaultEditor) spinner.getEditor())
                    .getTextField()
                    .getAccessibleContext()
                    .setAccessibleName(text);
        JPanel line = new JPanel(new WrappingLayout(4, 0));
        line.add(label);
        line.add(field);
        return line;
    }

    private JPanel side(String key, List<JComponent> fields) {
        JPanel side = new JPanel();
        side.setLayout(new BoxLayout(side, BoxLayout.PAGE_AXIS));
        int air = UIScale.scale(8);
        side.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createTitledBorder(words.text(key)),
                BorderFactory.createEmptyBorder(air, air, air, air)));
        for (JComponent field : fields) {
            field.setAlignmentX(LEFT_ALIGNMENT);
            field.setMaximumSize(new Dimension(Integer.MAX_VALUE, field.getPreferredSize().height));
            side.add(field);
        }
        side.setAlignmentY(TOP_ALIGNMENT);
        side.getAccessibleContext().setAccessibleName(words.text(key));
        return side;
    }

    @Override
    JComponent first() {
        return repeatStart;
    }

    /** @throws IllegalArgumentException if the numbers of the ending are none */
    Barlines barlines() {
        int which = jump.getSelectedIndex();
        return new Barlines(
                repeatStart.isSelected(),
                repeatEnd.isSelected() ? Optional.of((Integer) times.getValue()) : Optional.empty(),
                repeatEnd.isSelected() && afterJump.isSelected(),
                endings(),
                endingStop.isSelected(),
                segno.isSelected(),
                coda.isSelected(),
                which == 0 ? Optional.empty() : Optional.of(Barlines.Jump.values()[which - 1]),
                toCoda.isSelected(),
                fine.isSelected(),
                doubleBar.isSelected());
    }

    /** Numbers, and ranges of them: {@code 1, 2} or {@code 1-3}. */
    private List<Integer> endings() {
        List<Integer> numbers = new ArrayList<>();
        String text = ending.getText().replace('–', '-').strip();
        if (text.isEmpty()) return numbers;
        for (String part : text.split("[,.\\s]+")) {
            if (!part.matches("[1-9]\\d?(-[1-9]\\d?)?"))
                throw new IllegalArgumentException(words.text("edit.barlines.noEnding", text));
            String[] ends = part.split("-");
            for (int i = Integer.parseInt(ends[0]); i <= Integer.parseInt(ends[ends.length - 1]); i++) numbers.add(i);
        }
        if (numbers.isEmpty()) throw new IllegalArgumentException(words.text("edit.barlines.noEnding", text));
        return numbers;
    }

    @Override
    void make() {
        editor.setBarlines(barlines());
    }
}
