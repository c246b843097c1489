package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;

/** A picture in a scroll pane, as wide as there is room and as high as it needs. */
abstract class ScrolledCanvas extends JComponent implements Scrollable {
    /** Pixels that one notch of the wheel scrolls. */
    abstract double scrollStep();

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(UIScale.scale(1000), UIScale.scale(600));
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return (int) Math.ceil(scrollStep());
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        int page = orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
        return Math.max(1, page - (int) scrollStep());
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) accessibleContext = new AccessibleCanvas();
        return accessibleContext;
    }

    /** A picture with a description of its own. */
    private final class AccessibleCanvas extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
