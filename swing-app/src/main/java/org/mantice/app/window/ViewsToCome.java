package org.mantice.app.window;

import java.awt.EventQueue;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javax.swing.Timer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.view.PlannerPanel;

/**
 * Does what a window need not wait for, once the first sheet is painted or soon after the start if there is none: other
 * things first, then the views that the panel leaves to come. Each is an event of its own, so that the window answers in
 * between.
 */
final class ViewsToCome {
    private static final int SOON_MILLISECONDS = 1_500;

    private final PlannerPanel panel;
    private final Timer soon = new Timer(SOON_MILLISECONDS, event -> begin());
    private final Deque<Runnable> others;
    private boolean begun;

    private ViewsToCome(PlannerPanel panel, List<Runnable> others) {
        this.panel = panel;
        this.others = new ArrayDeque<>(others);
    }

    static void of(PlannerPanel panel, PlannerModel model, List<Runnable> others) {
        ViewsToCome views = new ViewsToCome(panel, others);
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
        if (!panel.isDisplayable()) return;
        if (others.isEmpty()) panel.buildNext();
        else others.remove().run();
        if (!others.isEmpty() || !panel.isWhole()) EventQueue.invokeLater(this::next);
    }
}
