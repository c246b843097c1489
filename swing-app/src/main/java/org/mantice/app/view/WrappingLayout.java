package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;

/**
 * Components one after the other in as many lines as the width asks for; unlike its parent it also asks for their
 * height. Before the container has a width, one line is assumed.
 */
final class WrappingLayout extends FlowLayout {
    private boolean together;

    /** @param gap in unscaled pixels between components and lines */
    WrappingLayout(int gap) {
        this(gap, gap);
    }

    /** For a few things within such a line, which belong together: they wrap only where the whole line is too narrow. */
    static WrappingLayout together(int gap) {
        WrappingLayout layout = new WrappingLayout(gap, 0);
        layout.together = true;
        return layout;
    }

    /**
     * @param gap in unscaled pixels between components
     * @param lineGap between lines
     */
    WrappingLayout(int gap, int lineGap) {
        super(LEADING, UIScale.scale(gap), UIScale.scale(lineGap));
        setAlignOnBaseline(true);
    }

    @Override
    public Dimension preferredLayoutSize(Container target) {
        int width = together && target.getParent() != null ? target.getParent().getWidth() : target.getWidth();
        if (width == 0) return super.preferredLayoutSize(target);
        synchronized (target.getTreeLock()) {
            Insets insets = target.getInsets();
            int most = width - insets.left - insets.right - 2 * getHgap();
            int widest = 0;
            int x = 0;
            int line = 0;
            int height = insets.top + insets.bottom + getVgap();
            for (Component component : target.getComponents()) {
                if (!component.isVisible()) continue;
                Dimension size = component.getPreferredSize();
                if (x > 0 && x + size.width > most) {
                    height += line + getVgap();
                    x = 0;
                    line = 0;
                }
                x += size.width + getHgap();
                line = Math.max(line, size.height);
                widest = Math.max(widest, x);
            }
            return new Dimension(widest + insets.left + insets.right + getHgap(), height + line + getVgap());
        }
    }

    /** Narrow enough to wrap. */
    @Override
    public Dimension minimumLayoutSize(Container target) {
        int widest = 0;
        for (Component component : target.getComponents())
            if (component.isVisible()) widest = Math.max(widest, component.getMinimumSize().width);
        return new Dimension(widest + 2 * getHgap(), preferredLayoutSize(target).height);
    }
}
