package org.mantice.app.view;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;

/** Lays out and paints components where there is no screen. */
public final class Pictures {
    private Pictures() {}

    /** Gives a size and lays the whole tree out, several times, since wrapped text knows its height only by its width. */
    public static void layOut(Component component, int width, int height) {
        component.setSize(width, height);
        for (int i = 0; i < 4; i++) layOut(component);
    }

    private static void layOut(Component component) {
        component.invalidate();
        component.doLayout();
        if (component instanceof Container container) for (Component child : container.getComponents()) layOut(child);
    }

    public static BufferedImage of(Component component, int width, int height) {
        layOut(component, width, height);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        component.print(graphics);
        graphics.dispose();
        return image;
    }

    /** Keeps the picture where the property {@code mantice.pictures} names a folder. */
    public static void keep(BufferedImage image, String name) throws IOException {
        String folder = System.getProperty("mantice.pictures");
        if (folder != null) ImageIO.write(image, "png", new File(folder, name + ".png"));
    }

    /** How many different colours a picture has. */
    public static int colours(BufferedImage image) {
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y++)
            for (int x = 0; x < image.getWidth(); x++) colours.add(image.getRGB(x, y));
        return colours.size();
    }
}
