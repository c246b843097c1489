package org.mantice.app.view;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JSplitPane;

/**
 * Two areas with a border between them that begins at a share of the size there is, and is the player's from then on. By
 * itself Swing would begin where the areas' wishes put it, which on a small screen leaves one of them nothing.
 */
final class FirstSplit extends JSplitPane {
    private final double share;
    /** Where the border was put; -1 before. */
    private int placed = -1;

    /**
     * @param share of the first area, 0 to 1
     * @param name for who cannot see it
     */
    FirstSplit(int direction, Component first, Component second, double share, String name) {
        super(direction, true, first, second);
        this.share = share;
        setResizeWeight(share);
        setBorder(BorderFactory.createEmptyBorder());
        getAccessibleContext().setAccessibleName(name);
    }

    /** The share holds at every size until the player moves the border. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        int length = getOrientation() == HORIZONTAL_SPLIT ? width : height;
        boolean moved = placed >= 0 && getDividerLocation() != placed;
        if (moved || length <= getDividerSize()) return;
        placed = (int) Math.round(share * (length - getDividerSize()));
        setDividerLocation(placed);
    }
}
