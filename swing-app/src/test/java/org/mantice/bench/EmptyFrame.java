package org.mantice.bench;

import java.awt.EventQueue;
import java.awt.Toolkit;
import javax.swing.JFrame;
import org.mantice.app.look.Looks;

/** A program of its own: shows a frame with nothing in it, in our light look, says so once it is painted, and ends. */
final class EmptyFrame {
    private EmptyFrame() {}

    public static void main(String[] args) {
        EventQueue.invokeLater(() -> {
            Looks.use(false);
            JFrame frame = new JFrame();
            frame.setSize(1280, 860);
            PaintWatch.install(() -> {
                if (!frame.isShowing()) return;
                Toolkit.getDefaultToolkit().sync();
                System.out.println(StartTimes.PAINTED);
                Runtime.getRuntime().halt(0);
            });
            frame.setVisible(true);
        });
    }
}
