package org.mantice.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.mantice.app.InventedTune;
import org.mantice.app.model.Background;
import org.mantice.app.model.DirectBackground;
import org.mantice.app.model.Offer;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Planners;
import org.mantice.app.sheet.PlanBand;
import org.mantice.app.sheet.Pointing;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReader;

/** What the window's benchmarks show: an invented tune of 64 measures, planned. */
final class InventedPlans {
    static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final int MEASURES = 64;
    private static final int SEED = 7;

    private InventedPlans() {}

    static String musicXml() {
        return InventedTune.musicXml(MEASURES, SEED);
    }

    static PlannerModel model(Background background) {
        PlannerModel model = new PlannerModel(Packs.ofClassPath(), background, Planners.SETUP);
        byte[] file = musicXml().getBytes(StandardCharsets.UTF_8);
        model.open(new OpenTune(
                "invented.musicxml",
                new TuneReader().read("invented.musicxml", file, ReadOptions.DEFAULT),
                Optional.empty()));
        return model;
    }

    /** @param plans compared; without any the bare staff */
    static SheetContent content(int plans) {
        PlannerModel model = model(new DirectBackground());
        if (plans > 0) {
            List<Integer> compared = new ArrayList<>();
            for (int plan = 0; plan < plans; plan++) compared.add(plan);
            model.compare(compared);
        }
        PlannerState state = model.state();
        Set<Spot> differing = new HashSet<>();
        state.differences().forEach(difference -> differing.add(difference.spot()));
        List<PlanBand> bands = new ArrayList<>();
        for (Offer offer : state.offers().subList(0, plans))
            bands.add(new PlanBand(
                    offer.letter(),
                    offer.letter(),
                    bands.size(),
                    bands.isEmpty(),
                    offer.plan(),
                    plans > 1 ? differing : Set.of(),
                    List.of()));
        return new SheetContent(
                state.performance().orElseThrow(),
                state.setup().accordion(),
                new Reading.AsWritten().cells(state.performance().orElseThrow()),
                bands,
                EnumSet.allOf(Strip.class),
                Pointing.NOWHERE);
    }
}
