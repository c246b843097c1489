package org.mantice.bench;

import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.mantice.app.Main;
import org.mantice.app.model.Answer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.window.ShownWindow;
import org.mantice.layer.RuleBook;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;

/**
 * A program of its own: opens the app on a tune, opens it again and drags a weight of every rule set, and says which event
 * kept the window's thread longest each time.
 *
 * <p>Its argument is the tune's file.
 */
final class LongestEvents {
    private static final int DRAGGED = 25;
    private static final int BETWEEN_MILLISECONDS = 40;
    private static final int QUIET_MILLISECONDS = 700;
    private static final int GIVE_UP_SECONDS = 120;

    private final DispatchWatch watch;

    private LongestEvents(DispatchWatch watch) {
        this.watch = watch;
    }

    public static void main(String[] args) throws Exception {
        LongestEvents events = new LongestEvents(DispatchWatch.install());
        Thread app = new Thread(() -> Main.main(new String[] {"window", "--language", "en", args[0]}), "app");
        app.start();
        while (!onEventThread(() -> ShownWindow.model().isPresent())) Thread.sleep(1);
        events.say("start, before there is a window");
        events.untilAnswered();
        events.say("start, up to all plans of the tune");
        PlannerModel model = onEventThread(() -> ShownWindow.model().orElseThrow());
        onEventThread(() -> {
            model.open(model.state().tune().orElseThrow());
            return model;
        });
        events.untilAnswered();
        events.say("opening the tune once more");
        for (RuleSet set : RuleSet.values()) events.drag(model, set);
        Runtime.getRuntime().halt(0);
    }

    private void drag(PlannerModel model, RuleSet set) throws Exception {
        String rule =
                RuleBook.of(model.packs().providers()).rules(set).get(0).info().id();
        for (int step = 1; step <= DRAGGED; step++) {
            int weight = 1_000 + 40 * step;
            boolean last = step == DRAGGED;
            EventQueue.invokeLater(() -> {
                Taste taste = model.state().setup().player().taste();
                model.setTaste(taste.with(rule, weight), !last);
            });
            Thread.sleep(BETWEEN_MILLISECONDS);
        }
        untilAnswered();
        say("dragging a weight: " + set.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private void say(String when) {
        DispatchWatch.Handling longest = watch.take();
        System.out.printf(
                Locale.ROOT, "| %s | %.0f | %.0f | %s |%n", when, longest.ownMs(), longest.ms(), longest.event());
    }

    /** Until all plans are there and nothing has happened for a while. */
    private void untilAnswered() throws Exception {
        until(state -> state.answer() instanceof Answer.Ready);
        Thread.sleep(QUIET_MILLISECONDS);
        onEventThread(() -> true);
    }

    private static void until(Predicate<PlannerState> reached) throws Exception {
        long start = System.nanoTime();
        while (!onEventThread(() ->
                ShownWindow.model().map(PlannerModel::state).filter(reached).isPresent())) {
            if (System.nanoTime() - start > GIVE_UP_SECONDS * 1_000_000_000L)
                throw new IllegalStateException("no answer after " + GIVE_UP_SECONDS + " s");
            Thread.sleep(20);
        }
    }

    private static <T> T onEventThread(Supplier<T> question) throws InterruptedException, InvocationTargetException {
        AtomicReference<T> answer = new AtomicReference<>();
        EventQueue.invokeAndWait(() -> answer.set(question.get()));
        return answer.get();
    }

    /** What the program said, a row of a table each. */
    static List<String> rows(Process process) throws java.io.IOException {
        List<String> rows = new ArrayList<>();
        try (var lines = process.inputReader()) {
            lines.lines().filter(line -> line.startsWith("|")).forEach(rows::add);
        }
        return rows;
    }
}
