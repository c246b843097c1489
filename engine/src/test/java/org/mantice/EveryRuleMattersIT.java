package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.ExampleScenes.Pair;
import org.mantice.instrument.AccordionPresets;
import org.mantice.layer.RuleBook;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Explanation;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.Plan;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.reading.TuneReader;
import org.mantice.rule.RuleSet;
import org.mantice.tune.Tune;

/**
 * No rule is a stand-in: switched off, each changes the whole plan of at least one example tune for one of the stated
 * accordions and players, and the explanation says what the rule had avoided. Which is printed.
 */
class EveryRuleMattersIT {
    /** The layers in the order of a plan. */
    private static final List<RuleSet> LAYERS =
            List.of(RuleSet.REPEAT_VARIATION, RuleSet.JUMP_COST, RuleSet.BELLOWS_POLICY, RuleSet.FINGERING_SPAN);

    private final Planner planner = new Planner(Packs.ofClassPath().providers());

    @Test
    void switchingOffAnyRuleChangesThePlanOfAnExampleTuneAndTheExplanationNamesIt() throws IOException {
        Map<String, RuleSet> idle = new LinkedHashMap<>();
        for (RuleBook.Entry entry : planner.rules().entries())
            idle.put(entry.id(), entry.rule().info().ruleSet());
        assertThat(idle).hasSizeGreaterThan(40);
        List<String> matters = new ArrayList<>();
        for (Scene scene : scenes())
            for (Path file : ExampleScenes.tunes()) {
                if (idle.isEmpty()) break;
                Planning planning = planner.prepare(scene.request(file));
                Taste taste = scene.pair().player().taste();
                Optional<Plan> best = best(planning, taste);
                if (best.isEmpty()) continue;
                for (String id : List.copyOf(idle.keySet()))
                    if (changes(planning, best.get(), idle.get(id), id, taste)) {
                        idle.remove(id);
                        matters.add(id + ": " + file.getFileName() + " " + scene.words());
                    }
            }

        matters.stream().sorted().forEach(System.out::println);
        assertThat(idle.keySet())
                .as("rules without which every example is planned alike")
                .isEmpty();
    }

    /** @param times through; as assumed where empty */
    private record Scene(Pair pair, OptionalInt times) {
        PlanRequest request(Path file) throws IOException {
            Tune tune = new TuneReader().read(file).tune();
            SettingsBuilder settings = SettingsBuilder.of(tune);
            times.ifPresent(settings::timesThrough);
            return new PlanRequest(tune, pair.accordion(), pair.player(), settings.build(), List.of(), 1);
        }

        String words() {
            return "on " + pair.accordion().id() + " by " + pair.player().id()
                    + (times.isPresent() ? ", " + times.getAsInt() + " times" : "");
        }
    }

    /** The examples first; then presets whose bass, switches or bellows leave other choices. */
    private static List<Scene> scenes() {
        List<Scene> scenes = new ArrayList<>();
        for (Pair pair : ExampleScenes.pairs()) scenes.add(new Scene(pair, OptionalInt.empty()));
        for (Pair pair : ExampleScenes.pairs()) scenes.add(new Scene(pair, OptionalInt.of(3)));
        for (String preset : List.of("beginner-26-key-12-bass", "worn-37-key-80-bass", "standard-37-key-96-bass"))
            for (int times : new int[] {1, 2})
                scenes.add(new Scene(
                        new Pair(AccordionPresets.get(preset), PlayerPresets.get("small-hand")),
                        OptionalInt.of(times)));
        return scenes;
    }

    private static Optional<Plan> best(Planning planning, Taste taste) {
        return planning.best(taste, List.of()) instanceof Alternatives.Found found
                ? Optional.of(found.best())
                : Optional.empty();
    }

    /** Whether the layer of the rule plans otherwise without it; then the rule must charge the other plan more. */
    private static boolean changes(Planning planning, Plan best, RuleSet set, String id, Taste taste) {
        int layer = LAYERS.indexOf(set);
        Plan without = best(planning, taste.with(id, 0)).orElseThrow();
        LayerPlan mine = best.layers().get(layer);
        LayerPlan other = without.layers().get(layer);
        if (mine.decisions().equals(other.decisions())) return false;
        Explanation here = ruleOf(planning.explain(best, taste), layer, id);
        Explanation there = ruleOf(planning.explain(without, taste), layer, id);
        if (layer == 0 || earlierAlike(best, without, layer))
            assertThat(there.cost() > here.cost() || bans(other, id) > bans(mine, id))
                    .as("%s charges the plan without it more", id)
                    .isTrue();
        Set<Explanation> places = new TreeSet<>((a, b) -> a.place().compareTo(b.place()));
        places.addAll(here.children());
        places.addAll(there.children());
        assertThat(places).as("%s is named with a place", id).isNotEmpty().allMatch(place -> !place.facts()
                .isEmpty());
        return true;
    }

    private static boolean earlierAlike(Plan one, Plan other, int layer) {
        for (int i = 0; i < layer; i++)
            if (!one.layers().get(i).equals(other.layers().get(i))) return false;
        return true;
    }

    private static long bans(LayerPlan plan, String id) {
        return plan.concessions().stream()
                .filter(ban -> ban.ruleId().equals(id))
                .count();
    }

    private static Explanation ruleOf(Explanation plan, int layer, String id) {
        return plan.children().get(layer).children().stream()
                .filter(rule -> rule.key().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
