package org.mantice.app.window;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;

/** The window's sign: an open fan of bellows, painted. */
final class AppIcon {
    private AppIcon() {}

    static List<Image> all() {
        return Stream.of(16, 24, 32, 48, 64, 128).<Image>map(AppIcon::of).toList();
    }

    private static BufferedImage of(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(new Color(0x0B5A66));
        graphics.fill(new RoundRectangle2D.Double(0, 0, size, size, size * 0.25, size * 0.25));
        graphics.setColor(new Color(0xFFFDF8));
        int folds = size < 32 ? 3 : 5;
        for (int fold = 0; fold < folds; fold++) {
            double left = size * (0.14 + 0.72 * fold / folds);
            double right = left + size * 0.72 / folds * 0.62;
            double tall = size * (0.18 + 0.10 * fold / folds);
            Path2D wedge = new Path2D.Double();
            wedge.moveTo(left, size * 0.5 - tall);
            wedge.lineTo(right, size * 0.5 - tall - size * 0.05);
            wedge.lineTo(right, size * 0.5 + tall + size * 0.05);
            wedge.lineTo(left, size * 0.5 + tall);
            wedge.closePath();
            graphics.fill(wedge);
        }
        graphics.dispose();
        return image;
    }
}
