package org.mantice.app.window;

import java.awt.EventQueue;
import javax.swing.Timer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.view.PlannerPanel;

/**
 * Builds the views that a panel leaves to come, once the first sheet is painted or soon after the start if there is none.
 * Each is an event of its own, so that the window answers in between.
 */
final class ViewsToCome {
    private static final int SOON_MILLISECONDS = 1_500;

    private final PlannerPanel panel;
    private final Timer soon = new Timer(SOON_MILLISECONDS, event -> begin());
    private boolean begun;

    private ViewsToCome(PlannerPanel panel) {
        this.panel = panel;
    }

    static void of(PlannerPanel panel, PlannerModel model) {
        ViewsToCome views = new ViewsToCome(panel);
        views.soon.setRepeats(false);
        views.soon.start();
        model.addListener(views::follow);
    }

    private void follow(PlannerState state) {
        if (state.performance().isPresent()) begin();
    }

    /** Painting was asked for before, so it comes before. */
    private void begin() {
        if (begun) return;
        begun = true;
        soon.stop();
        EventQueue.invokeLater(this::next);
    }

    private void next() {
        panel.buildNext();
        if (!panel.isWhole()) EventQueue.invokeLater(this::next);
    }
}
