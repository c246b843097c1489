package org.mantice.bench;

import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.mantice.app.look.Looks;
import org.mantice.app.model.Background;
import org.mantice.app.model.DirectBackground;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.view.Actions;
import org.mantice.app.view.Command;
import org.mantice.app.view.Pictures;
import org.mantice.app.view.PlannerPanel;
import org.mantice.layer.RuleBook;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * From a changed weight to the changed plan in a picture of the whole planner as a player has it who drags a weight, the
 * tab of the weights in front: the layer is searched again, every view
 * told, the sheet laid out and the panel painted. What is searched for after that is not waited for.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WeightPaintBenchmark {
    private static final int WIDTH = 1400;
    private static final int HEIGHT = 900;
    /** What is told first: the tune as played, then the plan with the layer searched again. */
    private static final int PREPARED_AND_RETOUCHED = 2;

    @Param
    public RuleSet set;

    private final UntilRetouched background = new UntilRetouched();
    private final BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    private PlannerModel model;
    private PlannerPanel panel;
    private String rule;
    private int weight;

    /** Thrown out of the work when its first new plan is painted. */
    private static final class Enough extends RuntimeException {}

    /**
     * Does the work at once and in the order given, but once asked to a search no further than to the first plan that it
     * changes; what views ask after that would wait behind the search in the window, so it is left out.
     */
    private final class UntilRetouched implements Background {
        private final Background whole = new DirectBackground();
        private boolean stopping;
        private boolean searching;
        private boolean painted;

        @Override
        public <I, R> Running start(
                Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed) {
            if (!stopping) return whole.start(work, interim, done, failed);
            if (searching) return () -> {};
            searching = true;
            AtomicInteger told = new AtomicInteger();
            try {
                R result = work.run(
                        news -> {
                            interim.accept(news);
                            if (told.incrementAndGet() < PREPARED_AND_RETOUCHED) return;
                            paint();
                            throw new Enough();
                        },
                        () -> false);
                done.accept(result);
            } catch (Enough e) {
                painted = true;
            } catch (Exception e) {
                failed.accept(e);
            } finally {
                searching = false;
            }
            return () -> {};
        }

        @Override
        public Running later(Duration wait, Runnable call) {
            return () -> {};
        }

        @Override
        public void abandon() {}
    }

    @Setup
    public void open() {
        Looks.use(false);
        model = InventedPlans.model(background);
        Actions actions = new Actions(InventedPlans.ENGLISH);
        panel = PlannerPanel.withViewsToCome(model, InventedPlans.ENGLISH, actions, ProfileChoices.PRESETS);
        while (!panel.isWhole()) panel.buildNext();
        actions.get(Command.SHOW_TASTE).actionPerformed(new ActionEvent(panel, ActionEvent.ACTION_PERFORMED, ""));
        Pictures.layOut(panel, WIDTH, HEIGHT);
        rule = RuleBook.of(model.packs().providers()).rules(set).get(0).info().id();
        background.stopping = true;
    }

    private void paint() {
        layOut(panel);
        Graphics2D graphics = picture.createGraphics();
        panel.print(graphics);
        graphics.dispose();
    }

    /** As a window does: what has become invalid is laid out again. */
    private static void layOut(Container container) {
        if (!container.isValid()) container.doLayout();
        for (int i = 0; i < container.getComponentCount(); i++)
            if (container.getComponent(i) instanceof Container inner) layOut(inner);
    }

    /** Another weight each time, so that nothing can be remembered. */
    @Benchmark
    public BufferedImage paintedAfterChange() {
        weight = 500 + (weight + 7) % 1_000;
        Taste taste = model.state().setup().player().taste();
        background.painted = false;
        model.setTaste(taste.with(rule, weight), true);
        if (!background.painted) throw new IllegalStateException("no layer was searched again");
        return picture;
    }
}
