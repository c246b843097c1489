package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** Gives a view the room there is, but never less than some lines: on a low screen it scrolls. */
final class LeastHeight extends JPanel implements Scrollable {
    private final int lines;

    private LeastHeight(Component view, int lines) {
        super(new BorderLayout());
        this.lines = lines;
        add(view);
    }

    /** @param lines of text that the view needs at least */
    static JScrollPane of(Component view, int lines) {
        JScrollPane scroll = new JScrollPane(new LeastHeight(view, lines));
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, lines * lineHeight());
    }

    private int lineHeight() {
        return getFontMetrics(getFont()).getHeight();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 2 * lineHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() >= getPreferredSize().height;
    }
}
