package org.mantice.app.view;

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

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(UIManager.getFont("Label.font"));
        int gap = getFontMetrics(getFont()).getHeight() / 3;
        setBorder(BorderFactory.createEmptyBorder(gap, gap, gap, gap));
    }
}
