package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.OneRulePack;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.RuleSet;

class TasteModelTest {
    private static final Packs PACKS = Packs.ofClassPath();
    private final Words words = Words.of(Locale.ENGLISH);
    private final RuleWords rules = new RuleWords(PACKS.providers(), Locale.ENGLISH);

    private TasteModel taste(PlannerModel planner) {
        return TasteModel.of(planner.state(), PACKS, rules, words);
    }

    @Test
    void everyRuleStandsInTheGroupOfItsSet() {
        TasteModel taste = taste(Planners.empty());

        assertThat(taste.groups()).extracting(TasteModel.Group::ruleSet).containsExactly(RuleSet.values());
        long rulesThereAre = PACKS.providers().stream()
                .mapToLong(pack -> pack.rules().size())
                .sum();
        assertThat(taste.groups().stream()
                        .mapToLong(group -> group.rows().size())
                        .sum())
                .isEqualTo(rulesThereAre)
                .isGreaterThan(40);
        assertThat(taste.groups().stream().flatMap(group -> group.rows().stream()))
                .allSatisfy(row -> assertThat(row.title()).isNotEqualTo(row.ruleId()));
    }

    @Test
    void showsWhatTheChosenPlanPays() {
        PlannerModel planner = Planners.opened("the-rusty-gate");

        List<TasteModel.Row> rows = taste(planner).groups().stream()
                .flatMap(group -> group.rows().stream())
                .toList();

        assertThat(rows).extracting(TasteModel.Row::state).anyMatch(said -> said.matches("pays [1-9].*"));
        assertThat(rows).noneMatch(TasteModel.Row::changed);
    }

    @Test
    void aRuleOnAgainHasItsFormerWeight() {
        SwitchedOff switchedOff = new SwitchedOff();
        Taste taste = Taste.PLAIN.with("bellows.turns", 2_500);

        Taste off = switchedOff.switched(taste, "bellows.turns", false);
        Taste on = switchedOff.switched(off, "bellows.turns", true);

        assertThat(off.perMille("bellows.turns")).isZero();
        assertThat(on.perMille("bellows.turns")).isEqualTo(2_500);
        assertThat(switchedOff.switched(on, "bellows.turns", true)).isSameAs(on);
    }

    @Test
    void aRuleThatWasOffFromTheStartGetsItsUsualWeight() {
        Taste on = new SwitchedOff().switched(Taste.PLAIN.with("bellows.turns", 0), "bellows.turns", true);

        assertThat(on.perMille("bellows.turns")).isEqualTo(Taste.DEFAULT_PER_MILLE);
    }

    @Test
    void rulesAreFoundByAnyOfTheirWords() {
        TasteModel.Row turns = taste(Planners.empty()).groups().stream()
                .flatMap(group -> group.rows().stream())
                .filter(row -> row.ruleId().equals("bellows.turns"))
                .findFirst()
                .orElseThrow();

        assertThat(turns.matches("NUMBER of turns")).isTrue();
        assertThat(turns.matches("interrupts")).isTrue();
        assertThat(turns.matches(" ")).isTrue();
        assertThat(turns.matches("thumb")).isFalse();
    }

    private TasteModel.Row row(PlannerModel planner, String rule) {
        return taste(planner).groups().stream()
                .flatMap(group -> group.rows().stream())
                .filter(row -> row.ruleId().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatRulesPayIsWhatThePlanCosts() {
        PlannerModel planner = Planners.opened("the-rusty-gate");
        planner.setTaste(Taste.PLAIN.with("bellows.turns", 1_234));

        Offer chosen = planner.state().chosenOffer().orElseThrow();
        long paid = taste(planner).groups().stream()
                .flatMap(group -> group.rows().stream())
                .mapToLong(TasteModel.Row::paid)
                .sum();

        assertThat(paid).isEqualTo(chosen.cost()).isPositive();
    }

    @Test
    void saysInWordsWhatIsOffOrChanged() {
        PlannerModel planner = Planners.empty();
        planner.setTaste(Taste.PLAIN.with("bellows.turns", 0).with("bellows.evenness", 2_005));

        assertThat(row(planner, "bellows.turns").state()).isEqualTo("off");
        assertThat(row(planner, "bellows.evenness").state()).isEqualTo("changed");
        assertThat(row(planner, "bellows.evenness").changed()).isTrue();
        assertThat(row(planner, "bellows.place").state()).isEmpty();
    }

    @Test
    void aWeightIsWrittenExactlyAsTheLanguageWritesNumbers() {
        assertThat(TasteModel.percent(2_005, words)).isEqualTo("200.5");
        assertThat(TasteModel.percent(2_005, Words.of(Locale.GERMAN))).isEqualTo("200,5");
        assertThat(TasteModel.percent(1_000, words)).isEqualTo("100");
    }

    @Test
    void everyLeaningIsAStartInItsGroupAndSaysWhatItSets() {
        List<TasteModel.Group> groups = taste(Planners.empty()).groups();

        assertThat(groups.stream().mapToLong(group -> group.starts().size()).sum())
                .isEqualTo(PACKS.providers().stream()
                        .mapToLong(pack -> pack.leanings().size())
                        .sum());
        for (TasteModel.Group group : groups)
            assertThat(group.starts()).allSatisfy(start -> {
                assertThat(start.leaning().ruleSet()).isEqualTo(group.ruleSet());
                assertThat(start.name()).isNotEqualTo(start.leaning().id());
                assertThat(start.weights().split("; "))
                        .hasSameSizeAs(start.leaning().weights().keySet());
            });
    }

    @Test
    void aLeaningSetsItsOwnWeightsAndKeepsTheOthers() {
        PlannerModel planner = Planners.empty();
        planner.setTaste(Taste.PLAIN.with("fingering.span", 3_000));
        TasteModel.Start start = taste(planner).groups().stream()
                .filter(group -> group.ruleSet() == RuleSet.BELLOWS_POLICY)
                .findFirst()
                .orElseThrow()
                .starts()
                .get(0);

        planner.lean(start.leaning());

        Taste taste = planner.state().setup().player().taste();
        assertThat(start.leaning().weights()).isNotEmpty();
        start.leaning().weights().forEach((rule, weight) -> assertThat(taste.perMille(rule))
                .isEqualTo(weight));
        assertThat(taste.perMille("fingering.span")).isEqualTo(3_000);
    }

    @Test
    void aWeightPassedOverWhileDraggingIsNotTheFormerOne() {
        SwitchedOff switchedOff = new SwitchedOff();
        switchedOff.remember(Taste.PLAIN.with("bellows.turns", 2_500));

        Taste slidToNothing = Taste.PLAIN.with("bellows.turns", 0);
        switchedOff.remember(slidToNothing);

        assertThat(switchedOff.switched(slidToNothing, "bellows.turns", true).perMille("bellows.turns"))
                .isEqualTo(2_500);
    }

    @Test
    void aRuleThatWasMadeUsualAgainHasNoFormerWeight() {
        SwitchedOff switchedOff = new SwitchedOff();
        switchedOff.remember(Taste.PLAIN.with("bellows.turns", 2_500));
        switchedOff.remember(Taste.PLAIN);

        Taste on = switchedOff.switched(Taste.PLAIN.with("bellows.turns", 0), "bellows.turns", true);

        assertThat(on.perMille("bellows.turns")).isEqualTo(Taste.DEFAULT_PER_MILLE);
    }

    @Test
    void severalWordsMustAllBeThere() {
        TasteModel.Row turns = row(Planners.empty(), "bellows.turns");

        assertThat(turns.matches("turns number")).isTrue();
        assertThat(turns.matches("turns thumb")).isFalse();
    }

    @Test
    void aRuleOfAJarSaysItsPackAndVersion(@TempDir Path folder) throws IOException {
        OneRulePack.write(
                folder.resolve("packs/one.jar"),
                folder.resolve("work"),
                RuleSet.FINGERING_SPAN,
                FingerMoment.class,
                "return 0;");
        Packs packs = Packs.of(Optional.of(folder.resolve("packs")));
        PlannerModel planner = new PlannerModel(packs, new DirectBackground(), Planners.SETUP);

        TasteModel taste =
                TasteModel.of(planner.state(), packs, new RuleWords(packs.providers(), Locale.ENGLISH), words);

        List<TasteModel.Row> fromJars = taste.groups().stream()
                .flatMap(group -> group.rows().stream())
                .filter(row -> row.pack().isPresent())
                .toList();
        assertThat(fromJars).extracting(TasteModel.Row::ruleId).containsExactly(OneRulePack.RULE);
        assertThat(fromJars.get(0).pack()).contains("pack stranger, version 1.0.0");
        assertThat(fromJars.get(0).matches("STRANGER")).isTrue();
    }
}
