package org.mantice.app.window;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JDialog;
import javax.swing.JOptionPane;
import org.mantice.app.words.Words;

/** Dialogs with one page and one button. */
final class Pages {
    private Pages() {}

    static void show(Optional<? extends Window> owner, String title, Component page, Words words) {
        JOptionPane pane = new JOptionPane(page, JOptionPane.PLAIN_MESSAGE);
        pane.setOptions(new Object[] {words.text("window.close")});
        JDialog dialog =
                owner.map(window -> pane.createDialog(window, title)).orElseGet(() -> pane.createDialog(title));
        dialog.setResizable(true);
        keepOnScreen(dialog);
        dialog.setVisible(true);
        dialog.dispose();
    }

    /** No larger than most of its screen, over the window. */
    static void keepOnScreen(JDialog dialog) {
        GraphicsConfiguration screen = dialog.getGraphicsConfiguration();
        Rectangle bounds = screen.getBounds();
        Dimension size = dialog.getSize();
        dialog.setSize(Math.min(size.width, bounds.width * 9 / 10), Math.min(size.height, bounds.height * 9 / 10));
        dialog.setLocationRelativeTo(dialog.getOwner());
    }
}
