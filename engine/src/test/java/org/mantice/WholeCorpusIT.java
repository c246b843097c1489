package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.ExampleScenes.Pair;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Concession;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Plan;
import org.mantice.plugin.Packs;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/**
 * The examples and the corpus' lead sheets on the three accordions of the examples: each tune gets a plan within its
 * limits, or one that says what gave way, or reasons and remedies. The counts are printed.
 */
class WholeCorpusIT {
    private final Planner planner = new Planner(Packs.ofClassPath().providers());

    @Test
    void examplesArePlannedOnThreeAccordionsWithinLimitsOrSayWhatGaveWay() throws IOException {
        Map<String, Path> tunes = new LinkedHashMap<>();
        for (Path file : ExampleScenes.tunes()) tunes.put(file.getFileName().toString(), file);
        assertThat(tunes).hasSize(8);

        planAll("examples", tunes);
    }

    @Test
    void leadSheetsArePlannedOnThreeAccordionsWithinLimitsOrSayWhatGaveWay() throws IOException {
        Map<String, Path> tunes = new LinkedHashMap<>();
        for (Corpus.Numbered file : Corpus.files("mxl-leadsheets-pd", ".mxl"))
            tunes.put("lead sheet " + file.index(), file.path());
        if (Corpus.isWhole()) assertThat(tunes).hasSize(86);

        planAll("mxl-leadsheets-pd", tunes);
    }

    private void planAll(String what, Map<String, Path> tunes) throws IOException {
        Map<String, Tune> read = new LinkedHashMap<>();
        for (Map.Entry<String, Path> tune : tunes.entrySet())
            read.put(tune.getKey(), new TuneReader().read(tune.getValue()).tune());
        for (Pair pair : ExampleScenes.pairs()) {
            Counts counts = new Counts();
            read.forEach((name, tune) -> plan(name, tune, pair, counts));
            System.out.println(what + " on " + pair.accordion().id() + ": " + counts.words());
            assertThat(counts.planned + counts.unplayable).isEqualTo(tunes.size());
        }
    }

    private void plan(String name, Tune tune, Pair pair, Counts counts) {
        PlanRequest request =
                new PlanRequest(tune, pair.accordion(), pair.player(), SettingsBuilder.assumed(tune), List.of(), 1);
        String where = name + " on " + pair.accordion().id();
        try {
            Planning planning = planner.prepare(request);
            Alternatives answer = planning.best(pair.player().taste(), List.of());
            if (answer instanceof Alternatives.NotPlayable not) counts.add(name, not.obstacles());
            else {
                Plan best = ((Alternatives.Found) answer).best();
                new PlanChecks(planning).check(best, pair.player().taste());
                counts.add(best);
            }
        } catch (RuntimeException | AssertionError e) {
            throw new AssertionError(where + ": " + e.getMessage(), e);
        }
    }

    private static final class Counts {
        private int planned;
        private int unplayable;
        private int within;
        private int notProven;
        private final Map<String, Integer> gaveWay = new TreeMap<>();
        private final Map<String, Integer> obstacles = new TreeMap<>();

        void add(Plan plan) {
            planned++;
            if (!plan.provenBest()) notProven++;
            if (plan.concessions().isEmpty()) within++;
            TreeSet<String> kinds = new TreeSet<>();
            for (Concession concession : plan.concessions())
                kinds.add(concession.what().name());
            kinds.forEach(kind -> gaveWay.merge(kind, 1, Integer::sum));
        }

        void add(String name, List<Obstacle> reasons) {
            unplayable++;
            assertThat(reasons).as(name).isNotEmpty().allSatisfy(reason -> {
                assertThat(reason.message()).isNotBlank();
                assertThat(reason.remedies()).isNotEmpty();
            });
            TreeSet<String> codes = new TreeSet<>();
            reasons.forEach(reason -> codes.add(reason.code()));
            codes.forEach(code -> obstacles.merge(code, 1, Integer::sum));
        }

        String words() {
            return planned + " planned (" + within + " without anything giving way, " + notProven
                    + " not proven best; tunes in which gave way: " + gaveWay + "), " + unplayable
                    + " not playable as asked: " + obstacles;
        }
    }
}
