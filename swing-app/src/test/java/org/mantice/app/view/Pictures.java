package org.mantice.app.view;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/** Views painted without a screen. */
final class Pictures {
    private Pictures() {}

    /** Makes something on the event thread. */
    static <T> T made(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        try {
            SwingUtilities.invokeAndWait(task);
            return task.get();
        } catch (InterruptedException | InvocationTargetException | ExecutionException e) {
            throw new IllegalStateException(e.getCause() == null ? e : e.getCause());
        }
    }

    static void done(Runnable work) {
        made(() -> {
            work.run();
            return null;
        });
    }

    /** Lays a view out at a size, several times because lines wrap by the width of the time before. */
    static void layOut(JComponent view, int width, int height) {
        view.setSize(width, height);
        for (int round = 0; round < 3; round++) layOut(view);
    }

    private static void layOut(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component component : container.getComponents())
            if (component instanceof Container inner) layOut(inner);
    }

    static BufferedImage of(JComponent view, int width, int height) {
        return made(() -> {
            layOut(view, width, height);
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D graphics = image.createGraphics();
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.setColor(UIManager.getColor("Panel.background"));
            graphics.fillRect(0, 0, width, height);
            view.paint(graphics);
            graphics.dispose();
            return image;
        });
    }

    static void write(BufferedImage image, Path file) {
        try {
            ImageIO.write(image, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The component and all inside it. */
    static List<Component> all(Component component) {
        List<Component> all = new ArrayList<>(List.of(component));
        if (component instanceof Container container)
            for (Component inner : container.getComponents()) all.addAll(all(inner));
        return all;
    }

    static <T> List<T> all(Component component, Class<T> kind) {
        return all(component).stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
