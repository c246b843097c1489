package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
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

        assertThat(rows).extracting(TasteModel.Row::cost).anyMatch(cost -> cost.matches("pays [1-9].*"));
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
}
