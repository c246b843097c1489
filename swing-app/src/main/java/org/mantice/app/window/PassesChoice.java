package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import org.mantice.app.words.Words;

/**
 * How a tune is written: with its repeats, or with every time through written out, then also with the left hand of the
 * plan.
 */
final class PassesChoice extends JPanel {
    private final JRadioButton writtenOut;
    private final JCheckBox bassStaff;

    /** @param planned whether there is a plan whose left hand can be written */
    PassesChoice(Words words, boolean planned) {
        setLayout(new BoxLayout(this, BoxLayout.PAGE_AXIS));
        setBorder(BorderFactory.createEmptyBorder(0, UIScale.scale(10), 0, 0));
        JRadioButton asWritten = new JRadioButton(words.text("window.score.asWritten"), true);
        writtenOut = new JRadioButton(words.text("window.score.writtenOut"));
        asWritten.setToolTipText(words.text("window.score.asWritten.hint"));
        writtenOut.setToolTipText(words.text("window.score.writtenOut.hint"));
        bassStaff = new JCheckBox(words.text("window.score.bassStaff"));
        bassStaff.setToolTipText(words.text("window.score.bassStaff.hint"));
        bassStaff.setEnabled(false);
        writtenOut.addItemListener(event -> bassStaff.setEnabled(planned && writtenOut.isSelected()));
        ButtonGroup one = new ButtonGroup();
        one.add(asWritten);
        one.add(writtenOut);
        add(new JLabel(words.text("window.score.passes")));
        add(asWritten);
        add(writtenOut);
        add(bassStaff);
    }

    boolean writtenOut() {
        return writtenOut.isSelected();
    }

    boolean bassStaff() {
        return bassStaff.isEnabled() && bassStaff.isSelected();
    }
}
