package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import org.mantice.app.words.Words;

/** How a tune is written: with its repeats, or with every time through written out. */
final class PassesChoice extends JPanel {
    private final JRadioButton writtenOut;

    PassesChoice(Words words) {
        setLayout(new BoxLayout(this, BoxLayout.PAGE_AXIS));
        setBorder(BorderFactory.createEmptyBorder(0, UIScale.scale(10), 0, 0));
        JRadioButton asWritten = new JRadioButton(words.text("window.score.asWritten"), true);
        writtenOut = new JRadioButton(words.text("window.score.writtenOut"));
        asWritten.setToolTipText(words.text("window.score.asWritten.hint"));
        writtenOut.setToolTipText(words.text("window.score.writtenOut.hint"));
        ButtonGroup one = new ButtonGroup();
        one.add(asWritten);
        one.add(writtenOut);
        add(new JLabel(words.text("window.score.passes")));
        add(asWritten);
        add(writtenOut);
    }

    boolean writtenOut() {
        return writtenOut.isSelected();
    }
}
