package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.plan.Lock;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

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

    private WhyModel whyOf(PlannerModel model) {
        return WhyModel.of(model.state(), rules, words);
    }

    private static List<Site> sites(PlannerModel model) {
        return Site.of(
                model.state().offers().get(0).plan(),
                model.state().performance().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"the-rusty-gate", "seven-geese-in-the-schoolyard"})
    void everywhereExactlyOneChoiceIsThePlansOwn(String tune) {
        PlannerModel model = Planners.opened(tune);
        int seen = 0;
        List<Site> sites = sites(model);
        for (int i = 0; i < sites.size(); i += 13) {
            model.select(Optional.of(new Selection(0, sites.get(i).spot())));
            WhyModel why = whyOf(model);
            if (why.choices().isEmpty()) continue;
            seen++;
            assertThat(why.choices().stream().filter(WhyModel.Row::own))
                    .as(why.heading())
                    .hasSize(1);
            assertThat(why.choices().stream().map(row -> row.choice().extraCost()))
                    .isSorted();
        }
        assertThat(seen).isGreaterThan(5);
    }

    @Test
    void saysWhichShareOfThePlansCostAPlaceHas() {
        Offer offer = planner.state().offers().get(0);
        MusicWords music = new MusicWords(words);
        boolean paying = false;
        for (Site site : sites(planner)) {
            planner.select(Optional.of(new Selection(0, site.spot())));
            CostTree costs = why().costs().orElseThrow();
            if (costs.cost() == 0) {
                assertThat(why().heading()).endsWith("\nPays nothing.");
                continue;
            }
            assertThat(why().heading())
                    .contains("\nPays " + music.cost(costs.cost()) + ": ")
                    .endsWith(" of the plan's " + music.cost(offer.cost()) + ".");
            paying = true;
            break;
        }
        assertThat(paying).isTrue();
    }

    @Test
    void thereIsNothingToTurnWhereTheBellowsBegin() {
        Site first = sites(planner).stream()
                .filter(site -> site.spot().strip() == Strip.BELLOWS)
                .findFirst()
                .orElseThrow();
        planner.select(Optional.of(new Selection(0, first.spot())));

        assertThat(why().choices()).isEmpty();
        assertThat(why().note()).isEqualTo("The bellows begin here: there is nothing to turn yet.");
    }

    @Test
    void saysWhyThereIsNoOtherChoice() {
        Optional<WhyModel> only = sites(planner).stream()
                .filter(site -> site.spot().strip() == Strip.BUTTONS)
                .map(site -> {
                    planner.select(Optional.of(new Selection(0, site.spot())));
                    return why();
                })
                .filter(why -> why.choices().size() == 1)
                .findFirst();

        assertThat(only.orElseThrow().note())
                .isEqualTo("Nothing else was possible here: no other buttons fit the chord.");
    }

    /** Its first part is played twice in a pass, and the two playings have buttons of their own. */
    @Test
    void saysThatAChoiceInARepeatedPartHoldsEachTime() {
        PlannerModel geese = Planners.opened("seven-geese-in-the-schoolyard");
        Optional<WhyModel> repeated = sites(geese).stream()
                .filter(site ->
                        site.spot().strip() == Strip.FINGERS && site.spot().measure() < 12)
                .map(site -> {
                    geese.select(Optional.of(new Selection(0, site.spot())));
                    return whyOf(geese);
                })
                .filter(why -> !why.choices().isEmpty()
                        && why.choices().get(0).choice().extraCost() > 0)
                .findFirst();

        assertThat(repeated.orElseThrow().note()).startsWith("This place is played more than once in the pass");
    }

    @Test
    void saysThatItIsWorkedOutAndThatCostsAreOfBefore() {
        SteppedBackground background = new SteppedBackground();
        PlannerModel model = new PlannerModel(Packs.ofClassPath(), background, SmallTunes.setup());
        model.open(SmallTunes.open(SmallTunes.WALTZ));
        assertThat(whyOf(model).heading()).isEqualTo("The first plan is being searched for …");
        background.runAll();
        Spot spot = sites(model).stream()
                .map(Site::spot)
                .filter(one -> one.strip() == Strip.FINGERS)
                .findFirst()
                .orElseThrow();

        model.select(Optional.of(new Selection(0, spot)));
        assertThat(whyOf(model).note()).isEqualTo("Being worked out …");
        assertThat(whyOf(model).choices()).isEmpty();
        background.runAll();
        assertThat(whyOf(model).heading()).contains("Pays ");
        model.setTaste(Taste.PLAIN.with("fingering.span", 1_500));

        assertThat(whyOf(model).note()).isEqualTo("Being planned anew; these costs are of before.");
        assertThat(whyOf(model).choices()).isNotEmpty();
        assertThat(whyOf(model).heading()).doesNotContain("Pays ");
    }

    @Test
    void locksAreListedBeforeTheTuneIsKnownAsPlayed() {
        PlannerModel model = new PlannerModel(Packs.ofClassPath(), new SteppedBackground(), SmallTunes.setup());
        model.open(SmallTunes.open(SmallTunes.WALTZ));

        model.lock(new Lock.Turn(OptionalInt.empty(), new WrittenPlace(1, MusicalTime.ZERO), true));

        assertThat(model.state().performance()).isEmpty();
        assertThat(whyOf(model).locks())
                .extracting(WhyModel.LockRow::words)
                .allMatch(said -> said.contains("measure 2"));
        assertThat(whyOf(model).locks()).hasSize(1);
    }

    @Test
    void whereNothingCanBePlayedTheLocksAreOffered() {
        Setup usual = SmallTunes.setup();
        SteppedBackground none = new SteppedBackground();
        PlannerModel fresh = new PlannerModel(Packs.ofClassPath(), none, usual);
        fresh.open(SmallTunes.open(SmallTunes.WALTZ));
        fresh.lock(new Lock.Register(OptionalInt.empty(), "no-such-switch"));
        none.runAll();

        assertThat(fresh.state().answer()).isInstanceOf(Answer.NotPlayable.class);
        assertThat(whyOf(fresh).heading()).endsWith("Locks can be freed below.");
        assertThat(whyOf(fresh).locks()).hasSize(1);
        fresh.free(whyOf(fresh).locks().get(0).lock());
        none.runAll();
        assertThat(fresh.state().answer()).isInstanceOf(Answer.Ready.class);
    }

    @Test
    void readsAsPlainTextWithEveryChoice() {
        select(Strip.FINGERS);
        WhyModel why = why();

        String text = why.text(why.costs(), words);

        assertThat(text)
                .startsWith(why.heading() + "\n\n")
                .contains(why.costs().orElseThrow().lines());
        assertThat(text).contains(" – this plan\n");
        assertThat(text.lines().filter(line -> line.matches(" {2}\\d+[.]\\d\\d {2}finger .*")))
                .hasSameSizeAs(why.choices());
    }

    @Test
    void speaksGerman() {
        select(Strip.BELLOWS);
        Words german = Words.of(Locale.GERMAN);

        WhyModel why =
                WhyModel.of(planner.state(), new RuleWords(Packs.ofClassPath().providers(), Locale.GERMAN), german);

        assertThat(why.heading()).startsWith("Plan A, Durchgang 1, Takt ").contains("\nBalg: ");
        assertThat(why.text(why.costs(), german)).contains("dieser Plan", "teurer");
    }
}
