package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.mantice.examples.ExampleFiles;
import org.mantice.layer.Question;
import org.mantice.performance.Performer;
import org.mantice.plan.Explanation;
import org.mantice.plan.LeftHandPlan;
import org.mantice.player.BassMethod;
import org.mantice.player.Taste;
import org.mantice.reading.TuneReader;
import org.mantice.rule.lefthand.LeftHandRules;

/** No rule is a stand-in: each changes the plan of an example tune, and the explanation says so. */
class RulesMatterTest {
    private static List<Path> tunes() throws IOException {
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            return files.filter(file -> file.toString().endsWith("xml"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void switchingOffAnyRuleChangesThePlanOfAnExampleTune() throws IOException {
        Set<String> idle = new TreeSet<>();
        new LeftHandRules().rules().forEach(rule -> idle.add(rule.info().id()));
        List<LeftHandLayer> layers = new ArrayList<>();
        for (Path tune : tunes())
            for (int buttons : List.of(12, 48, 72))
                for (BassMethod method : BassMethod.values())
                    layers.add(LeftHands.layer(
                            Performer.perform(new TuneReader().read(tune).tune()), buttons, method, LeftHands.RULES));

        for (LeftHandLayer layer : layers) idle.removeAll(those(layer, idle));

        assertThat(idle).isEmpty();
    }

    /** Rules without which the layer plans something else, where what the rule saved is in the other's explanation. */
    private static Set<String> those(LeftHandLayer layer, Set<String> ids) {
        Set<String> found = new HashSet<>();
        LeftHandPlan plan = LeftHands.best(layer);
        for (String id : ids) {
            LeftHandPlan without = LeftHands.found(layer.best(Question.best(Taste.PLAIN.with(id, 0))))
                    .best();
            if (without.events().equals(plan.events())) continue;
            Explanation difference = layer.explain(without, Taste.PLAIN).minus(layer.explain(plan, Taste.PLAIN));
            assertThat(difference.children())
                    .as("%s without %s", layer, id)
                    .anyMatch(rule -> rule.key().equals(id) && rule.cost() > 0);
            found.add(id);
        }
        return found;
    }

    @Test
    void everyExampleTuneIsPlannedOnEverySize() throws IOException {
        for (Path tune : tunes())
            for (int buttons : List.of(8, 12, 24, 32, 40, 48, 60, 72, 80, 96, 120)) {
                LeftHandLayer layer = LeftHands.layer(
                        Performer.perform(new TuneReader().read(tune).tune()), buttons);

                assertThat(LeftHands.best(layer).events())
                        .as("%s on %s", tune, buttons)
                        .isNotEmpty();
            }
    }
}
