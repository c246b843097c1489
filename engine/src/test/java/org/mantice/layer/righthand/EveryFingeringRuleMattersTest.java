package org.mantice.layer.righthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.mantice.examples.ExampleFiles;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.performance.Performer;
import org.mantice.plan.Explanation;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Taste;
import org.mantice.reading.TuneReader;
import org.mantice.rule.Rule;
import org.mantice.rule.righthand.RightHandRules;

class EveryFingeringRuleMattersTest {
    @Test
    void switchingOffAnyRuleChangesAnExampleTuneAndTheDifferenceNamesIt() throws IOException {
        Set<String> matter = new TreeSet<>();
        List<Path> tunes;
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            tunes = files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }

        for (Path tune : tunes) {
            RightHandLayer layer = Hands.layer(
                    Performer.perform(new TuneReader().read(tune).tune()),
                    Instruments.WIDE,
                    95,
                    Hands.book(new RightHandRules()));
            RightHandPlan best = best(layer, Taste.PLAIN);
            for (Rule<?> rule : new RightHandRules().rules()) {
                RightHandPlan without = best(layer, Taste.PLAIN.with(rule.info().id(), 0));
                if (without.decisions().equals(best.decisions())) continue;
                Explanation difference = layer.explain(without, Taste.PLAIN).minus(layer.explain(best, Taste.PLAIN));
                if (difference.children().stream()
                        .anyMatch(child -> child.key().equals(rule.info().id())))
                    matter.add(rule.info().id());
            }
        }

        assertThat(new RightHandRules().rules())
                .allSatisfy(rule -> assertThat(matter).contains(rule.info().id()));
    }

    private static RightHandPlan best(RightHandLayer layer, Taste taste) {
        return ((Outcome.Found<RightHandPlan>) layer.best(Question.best(taste))).best();
    }
}
