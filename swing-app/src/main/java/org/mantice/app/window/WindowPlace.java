package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Optional;
import org.mantice.app.work.WindowBounds;

/** Where the window stands; a place that no screen shows any more is not taken again. */
final class WindowPlace {
    private static final int USUAL_WIDTH = 1400;
    private static final int USUAL_HEIGHT = 920;
    /** So much of the window must be on a screen to be caught by the mouse. */
    private static final int LEAST_SEEN = 100;

    private final Frame window;
    private Rectangle normal = new Rectangle();

    WindowPlace(Frame window) {
        this.window = window;
        window.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                remember();
            }

            @Override
            public void componentMoved(ComponentEvent event) {
                remember();
            }
        });
    }

    private void remember() {
        if (!isMaximised()) normal = window.getBounds();
    }

    private boolean isMaximised() {
        return (window.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
    }

    void restore(Optional<WindowBounds> last) {
        Rectangle screen = window.getGraphicsConfiguration().getBounds();
        Rectangle usual = new Rectangle(
                0,
                0,
                Math.min(UIScale.scale(USUAL_WIDTH), screen.width * 95 / 100),
                Math.min(UIScale.scale(USUAL_HEIGHT), screen.height * 92 / 100));
        Optional<Rectangle> known = last.map(at -> new Rectangle(at.x(), at.y(), at.width(), at.height()))
                .filter(WindowPlace::isSeen);
        window.setBounds(known.orElse(usual));
        normal = window.getBounds();
        if (known.isEmpty()) window.setLocationRelativeTo(null);
        if (last.filter(WindowBounds::maximised).isPresent()) window.setExtendedState(Frame.MAXIMIZED_BOTH);
    }

    private static boolean isSeen(Rectangle bounds) {
        for (GraphicsDevice device :
                GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
            GraphicsConfiguration screen = device.getDefaultConfiguration();
            Rectangle seen = bounds.intersection(screen.getBounds());
            if (seen.width >= LEAST_SEEN && seen.height >= LEAST_SEEN && bounds.y >= screen.getBounds().y) return true;
        }
        return false;
    }

    WindowBounds bounds() {
        return new WindowBounds(
                normal.x, normal.y, Math.max(1, normal.width), Math.max(1, normal.height), isMaximised());
    }
}
