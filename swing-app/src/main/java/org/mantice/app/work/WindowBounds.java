package org.mantice.app.work;

/**
 * Where the window stood, in the screen's own units; screens may have changed since.
 *
 * @param width 1 or more
 * @param height 1 or more
 * @param maximised whether it filled the screen; the numbers are then those of before
 */
public record WindowBounds(int x, int y, int width, int height, boolean maximised) {
    public WindowBounds {
        if (width < 1) throw new IllegalArgumentException("width is " + width + "; allowed: 1 or more");
        if (height < 1) throw new IllegalArgumentException("height is " + height + "; allowed: 1 or more");
    }
}
