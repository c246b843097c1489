package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.plan.Lock;
import org.mantice.plugin.Packs;

class WhyModelTest {
    private final Words words = Words.of(Locale.ENGLISH);
    private final RuleWords rules = new RuleWords(Packs.ofClassPath().providers(), Locale.ENGLISH);
    private final PlannerModel planner = Planners.opened("lanterns-at-the-weir");

    private WhyModel why() {
        return WhyModel.of(planner.state(), rules, words);
    }

    private Spot spot(Strip strip) {
        Offer offer = planner.state().offers().get(0);
        return Site.of(offer.plan(), planner.state().performance().orElseThrow()).stream()
                .map(Site::spot)
                .filter(one ->
                        one.strip() == strip && one.measure() > 2 || one.strip() == strip && strip == Strip.REGISTERS)
                .findFirst()
                .orElseThrow();
    }

    private void select(Strip strip) {
        planner.select(Optional.of(new Selection(0, spot(strip))));
    }

    @Test
    void tellsHowToAskWhereNothingIsSelected() {
        assertThat(why().heading()).startsWith("Select a finger");
        assertThat(why().choices()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Strip.class)
    void namesThePlansOwnChoiceAmongTheOthers(Strip strip) {
        select(strip);

        WhyModel why = why();

        assertThat(why.heading()).startsWith("Plan A, ");
        assertThat(why.choices()).hasSizeGreaterThan(1);
        assertThat(why.choices().stream().filter(WhyModel.Row::own)).hasSize(1);
        assertThat(why.choices().stream().map(row -> row.choice().extraCost())).isSorted();
    }

    @ParameterizedTest
    @EnumSource(Strip.class)
    void costsOfAPlaceAddUp(Strip strip) {
        select(strip);

        checkSums(why().costs().orElseThrow());
    }

    private static void checkSums(CostTree tree) {
        if (tree.children().isEmpty()) return;
        assertThat(tree.children().stream().mapToLong(CostTree::cost).sum()).isEqualTo(tree.cost());
        tree.children().forEach(WhyModelTest::checkSums);
    }

    @Test
    void takingAChoiceChangesThePlanAndIsListedAsLocked() {
        select(Strip.FINGERS);
        WhyModel.Row other =
                why().choices().stream().filter(row -> !row.own()).findFirst().orElseThrow();

        planner.set(other.choice(), false);

        WhyModel after = why();
        assertThat(after.locks()).hasSize(1);
        assertThat(after.heading()).contains("Locked by you.");
        assertThat(after.choices().stream()
                        .filter(WhyModel.Row::own)
                        .map(row -> row.choice().decision().value()))
                .containsExactly(other.choice().decision().value());
    }

    @Test
    void locksReadAsWords() {
        select(Strip.BELLOWS);
        planner.lockSelected(true);

        List<WhyModel.LockRow> locks = why().locks();

        assertThat(locks).hasSize(1);
        assertThat(locks.get(0).lock()).isInstanceOf(Lock.Turn.class);
        assertThat(locks.get(0).words()).contains("measure");
    }
}
