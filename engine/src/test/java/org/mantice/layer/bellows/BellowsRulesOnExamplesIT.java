package org.mantice.layer.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.mantice.examples.ExampleFiles;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.layer.lefthand.LeftHandLayer;
import org.mantice.layer.variation.VariationLayer;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Explanation;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.reading.TuneReader;
import org.mantice.rule.bellows.BellowsRules;
import org.mantice.rule.lefthand.LeftHandRules;
import org.mantice.rule.variation.VariationRules;

/** Every bellows rule matters: switching it off changes the plan of an example tune, and its explanation names it. */
class BellowsRulesOnExamplesIT {
    private static final List<String> INSTRUMENTS =
            List.of("student-26-key-48-bass", "standard-34-key-72-bass", "full-41-key-120-bass");

    private static final RuleBook BOOK =
            RuleBook.of(List.of(new VariationRules(), new LeftHandRules(), new BellowsRules()));

    private record Case(String name, BellowsLayer layer, BellowsPlan plan) {}

    private static List<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        Player player = PlayerPresets.get("medium-hand");
        List<Path> files;
        try (Stream<Path> list = Files.list(ExampleFiles.folder("tunes"))) {
            files = list.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            Performance performance =
                    Performer.perform(new TuneReader().read(file).tune());
            for (String instrument : INSTRUMENTS) {
                Accordion accordion = AccordionPresets.get(instrument);
                Question question = Question.best(Taste.PLAIN);
                if (!(new VariationLayer(performance, accordion, BOOK).best(question)
                        instanceof Outcome.Found<VariationPlan> variation)) continue;
                if (!(LeftHandLayer.of(performance, variation.best(), accordion, player, BOOK)
                                .best(question)
                        instanceof Outcome.Found<LeftHandPlan> left)) continue;
                BellowsLayer layer =
                        BellowsLayer.of(performance, variation.best(), left.best(), accordion, player, BOOK);
                if (layer.best(question) instanceof Outcome.Found<BellowsPlan> found)
                    cases.add(new Case(file.getFileName() + " on " + instrument, layer, found.best()));
            }
        }
        return cases;
    }

    @Test
    void switchingOffAnyRuleChangesThePlanOfAnExample() throws IOException {
        List<Case> cases = cases();
        assertThat(cases).hasSizeGreaterThan(8);
        Set<String> idle = new TreeSet<>();
        for (var rule : new BellowsRules().rules()) idle.add(rule.info().id());
        StringBuilder report = new StringBuilder();
        for (Case one : cases) {
            report.append(one.name())
                    .append(' ')
                    .append(one.plan().turns())
                    .append(" turns ")
                    .append(one.plan().concessions().size())
                    .append(" concessions:");
            for (String id : new TreeSet<>(one.plan().costByRule().keySet())) {
                Question off = Question.best(Taste.PLAIN.with(id, 0));
                if (one.layer().best(off) instanceof Outcome.Found<BellowsPlan> found
                        && !found.best().decisions().equals(one.plan().decisions())) {
                    idle.remove(id);
                    report.append(' ').append(id);
                }
            }
            report.append('\n');
        }
        assertThat(idle).as(report.toString()).isEmpty();
    }

    @Test
    void everyPlanOfAnExampleIsProvenBestWithinLimitsAndExplained() throws IOException {
        for (Case one : cases()) {
            assertThat(one.plan().provenBest()).as(one.name()).isTrue();
            assertThat(one.plan().planFactorPerMille()).as(one.name()).isGreaterThanOrEqualTo(1_000);
            Explanation explanation = one.layer().explain(one.plan(), Taste.PLAIN);
            assertThat(explanation.cost()).as(one.name()).isEqualTo(one.plan().cost(Taste.PLAIN));
            one.plan().costByRule().forEach((id, cost) -> assertThat(explanation.children())
                    .as(one.name())
                    .anyMatch(child -> child.key().equals(id) && child.cost() == 1_000 * cost));
            assertThat(one.layer().rescore(one.plan())).as(one.name()).isEqualTo(one.plan());
        }
    }
}
