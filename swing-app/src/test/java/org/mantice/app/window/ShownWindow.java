package org.mantice.app.window;

import java.awt.Frame;
import java.util.Optional;
import org.mantice.app.model.PlannerModel;

/** The window that this process shows, for programs that time it from inside. On the event thread. */
public final class ShownWindow {
    private ShownWindow() {}

    public static Optional<PlannerModel> model() {
        for (Frame frame : Frame.getFrames())
            if (frame instanceof MainWindow window && window.isShowing()) return Optional.of(window.model());
        return Optional.empty();
    }
}
