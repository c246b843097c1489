package org.mantice.app.view;

import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Text that wraps like a paragraph and can be selected, looking like a label. */
final class WrappedText extends JTextArea {
    /** @param name for screen readers */
    WrappedText(String text, String name) {
        super(text);
        setEditable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        getAccessibleContext().setAccessibleName(name);
    }

    /** A text that changes does not pull the view to itself. */
    @Override
    public void scrollRectToVisible(Rectangle wanted) {
        if (isFocusOwner()) super.scrollRectToVisible(wanted);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(UIManager.getFont("Label.font"));
        int gap = getFontMetrics(getFont()).getHeight() / 3;
        setBorder(BorderFactory.createEmptyBorder(gap, gap, gap, gap));
    }
}
