package org.mantice.app.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReader;

/** Planner models for tests, planning at once on the thread that asks. */
public final class Planners {
    public static final Setup SETUP = new Setup(
            AccordionPresets.get("full-41-key-120-bass"), PlayerPresets.get("medium-hand"), Wishes.NONE, List.of());

    private Planners() {}

    public static PlannerModel empty() {
        return new PlannerModel(Packs.ofClassPath(), new DirectBackground(), SETUP);
    }

    /** @param name of a shipped tune */
    public static OpenTune tune(String name) {
        String file = name + ".musicxml";
        try (InputStream in = Planners.class.getResourceAsStream("/examples/tunes/" + file)) {
            return new OpenTune(file, new TuneReader().read(file, in, ReadOptions.DEFAULT), Optional.empty());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** With a shipped tune, planned. */
    public static PlannerModel opened(String name) {
        PlannerModel model = empty();
        model.open(tune(name));
        return model;
    }
}
