package org.mantice.app.view;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;

/** Components below each other, as wide as the view that it scrolls in. */
final class TallPanel extends JPanel implements Scrollable {
    TallPanel() {
        setLayout(new BoxLayout(this, BoxLayout.PAGE_AXIS));
    }

    @Override
    protected void addImpl(Component component, Object constraints, int index) {
        if (component instanceof JComponent one) one.setAlignmentX(LEFT_ALIGNMENT);
        super.addImpl(component, constraints, index);
    }

    /** Whatever gets the focus inside is scrolled into view; called when all is inside. */
    void keepFocusInView() {
        keepFocusInView(this);
    }

    private void keepFocusInView(Container container) {
        for (Component child : container.getComponents()) {
            child.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent event) {
                    Container around = child.getParent();
                    scrollRectToVisible(SwingUtilities.convertRectangle(around, child.getBounds(), TallPanel.this));
                }
            });
            if (child instanceof Container inner) keepFocusInView(inner);
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return getFontMetrics(getFont()).getHeight() * 2;
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
        return false;
    }
}
