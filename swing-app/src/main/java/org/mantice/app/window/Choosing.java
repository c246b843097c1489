package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.mantice.app.words.Words;

/** A dialog in which something is chosen: Enter takes it, Escape leaves it. */
final class Choosing {
    private final JDialog dialog;
    private boolean taken;

    Choosing(Component over, String title) {
        Window owner = over instanceof Window window ? window : SwingUtilities.getWindowAncestor(over);
        dialog = new JDialog(owner, title, JDialog.DEFAULT_MODALITY_TYPE);
    }

    /** Takes what is chosen, as the button does. */
    void take() {
        taken = true;
        dialog.setVisible(false);
    }

    /**
     * Waits for the player.
     *
     * @param first what has the keys to begin with
     * @return whether something was taken
     */
    boolean ask(JComponent content, JComponent first, String take, Words words) {
        JButton yes = button(take, this::take);
        JButton no = button(words.text("window.cancel"), () -> dialog.setVisible(false));
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
        buttons.add(yes);
        buttons.add(no);
        JPanel all = new JPanel(new BorderLayout(0, UIScale.scale(8)));
        int edge = UIScale.scale(12);
        all.setBorder(BorderFactory.createEmptyBorder(edge, edge, edge / 2, edge));
        all.add(content);
        all.add(buttons, BorderLayout.PAGE_END);
        dialog.setContentPane(all);
        dialog.getRootPane().setDefaultButton(yes);
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.setVisible(false),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                first.requestFocusInWindow();
            }
        });
        dialog.pack();
        Pages.keepOnScreen(dialog);
        dialog.setVisible(true);
        dialog.dispose();
        return taken;
    }

    private static JButton button(String text, Runnable work) {
        JButton button = new JButton(text);
        button.getAccessibleContext().setAccessibleName(text);
        button.addActionListener(event -> work.run());
        return button;
    }
}
