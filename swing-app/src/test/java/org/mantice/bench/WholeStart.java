package org.mantice.bench;

import java.awt.Toolkit;
import java.util.Optional;
import org.mantice.app.Main;
import org.mantice.app.model.PlannerState;
import org.mantice.app.window.ShownWindow;

/**
 * A program of its own: starts the app as a player does, says when the tune's staff is painted and when the first plan
 * is, and ends.
 */
final class WholeStart {
    private static boolean sheet;

    private WholeStart() {}

    public static void main(String[] args) {
        PaintWatch.install(WholeStart::painted);
        Main.main(args);
    }

    private static void painted() {
        Optional<PlannerState> state = ShownWindow.model().map(model -> model.state());
        if (state.flatMap(PlannerState::performance).isEmpty()) return;
        Toolkit.getDefaultToolkit().sync();
        if (!sheet) System.out.println(StartTimes.PAINTED);
        sheet = true;
        if (state.orElseThrow().offers().isEmpty()) return;
        System.out.println(StartTimes.PLANNED);
        Runtime.getRuntime().halt(0);
    }
}
