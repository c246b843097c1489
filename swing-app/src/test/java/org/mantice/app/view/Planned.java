package org.mantice.app.view;

import java.util.List;
import java.util.function.Consumer;
import org.mantice.app.model.Background;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Setup;
import org.mantice.app.model.States;
import org.mantice.app.model.Wishes;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.PlayerPresets;

/** A planner for tests of views: everything is done at once, on the thread that asks. */
final class Planned {
    private Planned() {}

    private static final class AtOnce implements Background {
        @Override
        public <I, R> Running start(
                Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed) {
            R result;
            try {
                result = work.run(interim, () -> false);
            } catch (Exception e) {
                failed.accept(e);
                return () -> {};
            }
            done.accept(result);
            return () -> {};
        }

        public void abandon() {}

        public Running later(java.time.Duration wait, Runnable work) {
            return () -> {};
        }
    }

    static PlannerModel nothing() {
        return new PlannerModel(
                States.packs(),
                new AtOnce(),
                new Setup(
                        AccordionPresets.get("full-41-key-120-bass"),
                        PlayerPresets.get("medium-hand"),
                        Wishes.NONE,
                        List.of()));
    }

    static PlannerModel of(String tune) {
        PlannerModel model = nothing();
        model.open(States.open(tune));
        return model;
    }
}
