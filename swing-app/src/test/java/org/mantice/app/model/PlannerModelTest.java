package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.ButtonNames;
import org.mantice.layer.Choice;
import org.mantice.performance.TuneException;
import org.mantice.plan.Decision;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.rule.Leaning;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

/** With work done at once: what follows from what. */
class PlannerModelTest {
    private final PlannerModel model = new PlannerModel(States.packs(), new DirectBackground(), SmallTunes.setup());
    private final List<PlannerState> seen = new ArrayList<>();

    private PlannerState waltz() {
        model.addListener(seen::add);
        model.open(SmallTunes.open(SmallTunes.WALTZ));
        return model.state();
    }

    private Spot spot(Strip strip, int number) {
        return Site.of(
                        model.state().offers().get(0).plan(),
                        model.state().performance().orElseThrow())
                .stream()
                .map(Site::spot)
                .filter(spot -> spot.strip() == strip)
                .distinct()
                .skip(number)
                .findFirst()
                .orElseThrow();
    }

    private Insight select(Spot spot) {
        model.select(Optional.of(new Selection(0, spot)));
        return model.state().insight().orElseThrow();
    }

    private static List<String> values(Offer offer, Decision.Kind kind, WrittenPlace place) {
        return offer.plan().decisions().stream()
                .filter(decision -> decision.kind() == kind && decision.place().equals(place))
                .map(Decision::value)
                .toList();
    }

    @Test
    void nothingIsOpenAtFirst() {
        assertThat(model.state()).isEqualTo(States.nothing());
    }

    @Test
    void offersArriveOneByOneAndAreReadyInOrderOfCost() {
        PlannerState state = waltz();

        assertThat(seen).extracting(one -> one.offers().size()).isSorted().contains(0, 1, 2, 3);
        assertThat(seen)
                .filteredOn(PlannerState::isWorking)
                .extracting(one -> ((Answer.Working) one.answer()).fresh())
                .isSorted();
        assertThat(seen).extracting(PlannerState::isWorking).startsWith(true).endsWith(false);
        assertThat(state.answer()).isInstanceOf(Answer.Ready.class);
        assertThat(state.offers()).extracting(Offer::letter).containsExactly("A", "B", "C", "D");
        assertThat(state.offers()).extracting(Offer::cost).isSorted();
        assertThat(state.offers())
                .allMatch(offer -> offer.cost() == offer.plan().cost(Taste.PLAIN));
        assertThat(state.compared()).containsExactly(0, 1);
        assertThat(state.chosen()).isZero();
        assertThat(state.differences()).isNotEmpty();
        assertThat(state.undo()).isEmpty();
        assertThat(state.unsaved()).isFalse();
    }

    @Test
    void lettersStayWithTheirPlansWhileOthersArrive() {
        waltz();

        for (int i = 1; i < seen.size(); i++) {
            List<Offer> before = seen.get(i - 1).offers();
            if (seen.get(i).isWorking() && !before.isEmpty())
                assertThat(seen.get(i).offers()).startsWith(before.toArray(Offer[]::new));
        }
    }

    @Test
    void aTuneThatCannotBePlayedSaysWhy() {
        model.open(SmallTunes.open(Tunes.melody("4/4", "\"C\" C9 w")));

        assertThat(model.state().answer()).isInstanceOf(Answer.NotPlayable.class);
        assertThat(((Answer.NotPlayable) model.state().answer()).obstacles()).isNotEmpty();
        assertThat(model.state().performance()).isPresent();
        assertThat(model.state().chosen()).isEqualTo(-1);
    }

    @Test
    void aTuneWithoutNotesFails() {
        model.open(SmallTunes.open(Tunes.melody("4/4", "R w")));

        assertThat(model.state().answer()).isInstanceOf(Answer.Failed.class);
        assertThat(((Answer.Failed) model.state().answer()).cause()).isInstanceOf(TuneException.class);
    }

    @Test
    void aWishOutOfRangeFailsAndLeavesTheOffersInView() {
        PlannerState before = waltz();

        model.setWishes(Wishes.NONE.withTempo(OptionalInt.of(2)));

        assertThat(model.state().answer()).isInstanceOf(Answer.Failed.class);
        assertThat(((Answer.Failed) model.state().answer()).cause()).hasMessageContaining("tempo is 2");
        assertThat(model.state().offers()).isEqualTo(before.offers());
        assertThat(model.state().performance()).isEqualTo(before.performance());
    }

    @Test
    void locksThatContradictEachOtherLeaveTheAnswerOfBeforeInView() {
        PlannerState before = waltz();

        model.lock(new Lock.Turn(OptionalInt.empty(), new WrittenPlace(1, MusicalTime.of(1, 64)), true));

        assertThat(model.state().answer()).isInstanceOf(Answer.NotPlayable.class);
        assertThat(((Answer.NotPlayable) model.state().answer()).obstacles())
                .extracting(obstacle -> obstacle.code())
                .contains("locks-contradict");
        assertThat(model.state().offers()).isEqualTo(before.offers());

        model.freeAll();

        assertThat(model.state().answer()).isEqualTo(before.answer());
    }

    @Test
    void anotherAccordionPlayerTempoOrNumberOfTimesIsPlannedAnew() {
        PlannerState before = waltz();

        model.setAccordion(AccordionPresets.get("student-26-key-48-bass"));
        assertThat(model.state().offers()).isNotEqualTo(before.offers());
        model.setPlayer(PlayerPresets.get("small-hand"));
        assertThat(model.state().setup().player().id()).isEqualTo("small-hand");
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(3)).withPlans(2));

        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        assertThat(model.state().offers()).hasSize(2);
        assertThat(model.state().performance().orElseThrow().passes()).hasSize(3);
        assertThat(model.state().offers().get(0).plan().variation().passes()).hasSize(3);
    }

    @Test
    void openingAnotherTuneForgetsLocksHistoryAndWhatWasWishedForTheTune() {
        waltz();
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(1)).withPlans(3));
        model.lock(new Lock.Octave(OptionalInt.empty(), 0));
        model.choose(1);
        model.nextDifference();

        model.open(SmallTunes.open(SmallTunes.TWO_PARTS));

        PlannerState state = model.state();
        assertThat(state.setup().locks()).isEmpty();
        assertThat(state.setup().wishes()).isEqualTo(Wishes.NONE.withPlans(3));
        assertThat(state.undo()).isEmpty();
        assertThat(state.unsaved()).isFalse();
        assertThat(state.chosen()).isZero();
        assertThat(state.selection()).isEmpty();
        assertThat(state.differenceAt()).isEmpty();
    }

    @Test
    void wishesSaidBeforeAnyTuneWasOpenHoldForTheFirst() {
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(1)));
        assertThat(model.state().undo()).isEmpty();

        assertThat(waltz().performance().orElseThrow().passes()).hasSize(1);
    }

    @Test
    void weightsRePriceWhatIsInViewAndThenPlanAnew() {
        waltz();
        seen.clear();
        Taste taste = Taste.PLAIN.with("bellows.turns", 9_000);

        model.setTaste(taste);

        assertThat(seen.get(1).isWorking()).isTrue();
        for (PlannerState state : seen.subList(1, seen.size()))
            assertThat(state.offers())
                    .allMatch(offer -> offer.cost() == offer.plan().cost(taste));
        assertThat(model.state().offers().get(0).plan())
                .isEqualTo(((Alternatives.Found) planning().best(taste, List.of())).best());
    }

    private static Planning planning() {
        Setup setup = SmallTunes.setup();
        return new Planner(States.packs().providers())
                .prepare(new PlanRequest(
                        SmallTunes.WALTZ,
                        setup.accordion(),
                        setup.player(),
                        setup.wishes().settings(SmallTunes.WALTZ),
                        List.of(),
                        4));
    }

    @Test
    void theChosenPlanIsShownRetouchedBeforeTheNewOnesArrive() {
        PlannerState before = waltz();
        model.choose(1);
        seen.clear();
        WrittenPlace place = new WrittenPlace(4, MusicalTime.ZERO);
        boolean turned =
                !values(before.offers().get(1), Decision.Kind.TURN, place).isEmpty();

        model.lock(new Lock.Turn(OptionalInt.empty(), place, !turned));

        PlannerState interim = seen.stream()
                .filter(state -> state.answer() instanceof Answer.Working working && working.fresh() == 0)
                .filter(state -> !state.offers().equals(before.offers()))
                .findFirst()
                .orElseThrow();
        assertThat(interim.offers().get(0)).isEqualTo(before.offers().get(0));
        assertThat(interim.offers().get(1).letter()).isEqualTo("B");
        assertThat(values(interim.offers().get(1), Decision.Kind.TURN, place).isEmpty())
                .isEqualTo(turned);
        assertThat(interim.offers().get(1).plan().leftHand())
                .isEqualTo(before.offers().get(1).plan().leftHand());
        assertThat(interim.chosen()).isEqualTo(1);
    }

    @Test
    void theChosenPlanStaysChosenWhereItIsStillAmongTheOffers() {
        PlannerState before = waltz();
        model.choose(2);

        model.setWishes(Wishes.NONE.withPlans(6));

        assertThat(model.state().offers()).hasSizeGreaterThan(2);
        assertThat(Likeness.same(
                        model.state().chosenOffer().orElseThrow().plan(),
                        before.offers().get(2).plan()))
                .isTrue();
    }

    @Test
    void comparedPlansAreThoseThatThePlayerPicked() {
        waltz();

        model.compare(List.of(3, 1, 1));

        assertThat(model.state().compared()).containsExactly(1, 3);
        assertThat(model.state().differences())
                .isEqualTo(Differences.between(
                        List.of(
                                model.state().offers().get(1).plan(),
                                model.state().offers().get(3).plan()),
                        model.state().performance().orElseThrow()));
        assertThat(model.state().undo()).isEmpty();
        assertThatThrownBy(() -> model.compare(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> model.compare(List.of(0, 4)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("offer is 4; allowed: 0 to 3");
    }

    @Test
    void differencesAreSteppedThroughRoundAndRound() {
        int count = waltz().differences().size();
        assertThat(count).isGreaterThan(2);

        model.previousDifference();
        assertThat(model.state().differenceAt()).hasValue(count - 1);
        model.nextDifference();
        assertThat(model.state().differenceAt()).hasValue(0);
        model.nextDifference();
        assertThat(model.state().differenceAt()).hasValue(1);
        assertThat(model.state().selection().orElseThrow().spot())
                .isEqualTo(model.state().differences().get(1).spot());
        assertThat(model.state().selection().orElseThrow().offer()).isZero();
        assertThat(model.state().insight()).isPresent();
    }

    @Test
    void steppingStaysInThePlanInWhichSomethingIsSelected() {
        waltz();
        model.select(Optional.of(new Selection(1, spot(Strip.FINGERS, 3))));

        model.stepTo(1);

        assertThat(model.state().selection().orElseThrow().offer()).isEqualTo(1);
        assertThatThrownBy(() -> model.stepTo(1_000)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theReadingTurnsToTheSweepInWhichADifferenceIsPlayed() {
        model.open(SmallTunes.open(SmallTunes.TWO_PARTS));
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(1)));
        int second = firstDifferenceIn(2, 3);

        model.stepTo(second);

        assertThat(model.state().reading()).isEqualTo(new Reading.OneSweep(1));
        model.setReading(new Reading.AsPlayed());
        model.stepTo(second);
        assertThat(model.state().reading()).isEqualTo(new Reading.AsPlayed());
    }

    /** Of plans that differ in played measures from one to another, picked by hand. */
    private int firstDifferenceIn(int first, int last) {
        List<Offer> offers = model.state().offers();
        for (int one = 0; one < offers.size(); one++)
            for (int other = one + 1; other < offers.size(); other++) {
                model.compare(List.of(one, other));
                List<Difference> differences = model.state().differences();
                for (int i = 0; i < differences.size(); i++) {
                    int measure = differences.get(i).spot().measure();
                    if (first <= measure && measure <= last) return i;
                }
            }
        throw new AssertionError("no plans differ there");
    }

    @Test
    void theInsightSpeaksOfThePlaceAlone() {
        waltz();
        for (Strip strip : Strip.values()) {
            Insight insight = select(spot(strip, strip == Strip.REGISTERS || strip == Strip.BELLOWS ? 1 : 3));

            assertThat(insight.here()).as("%s", strip).isNotEmpty();
            assertThat(insight.here()).extracting(Decision::kind).allMatch(kind -> Site.strip(kind) == strip);
            assertThat(insight.choices()).as("%s", strip).hasSizeGreaterThan(1);
            assertThat(insight.choices()).extracting(Choice::extraCost).isSorted();
            assertThat(insight.choices().get(0).extraCost()).isZero();
            assertThat(insight.choices())
                    .extracting(choice -> choice.decision().kind())
                    .allMatch(kind -> Site.strip(kind) == strip && kind != Decision.Kind.HAND_PLACE);
            assertThat(insight.explanation().key()).isEqualTo("plan");
            assertThat(insight.explanation().children())
                    .extracting(Explanation::key)
                    .containsExactly(InsightFinder.layer(strip).id());
            assertThat(insight.locks()).isEmpty();
        }
    }

    @Test
    void theSharesOfAllPlacesOfAHandAddUpToItsCost() {
        PlannerState state = waltz();
        Explanation[] whole = new Explanation[1];
        model.explain(0, tree -> whole[0] = tree);
        assertThat(whole[0].cost()).isEqualTo(state.offers().get(0).cost());
        long sum = 0;
        for (int number = 0; number < state.performance().orElseThrow().treble().size(); number++)
            sum += select(spot(Strip.FINGERS, number)).explanation().cost();

        assertThat(sum)
                .isEqualTo(state.offers().get(0).plan().rightHand().cost(Taste.PLAIN))
                .isPositive();
    }

    @Test
    void differencesOfTreesAreThoseOfTheCosts() {
        PlannerState state = waltz();
        Explanation[] difference = new Explanation[1];

        model.explainDifference(1, 0, tree -> difference[0] = tree);

        assertThat(difference[0].cost())
                .isEqualTo(state.offers().get(1).cost() - state.offers().get(0).cost());
    }

    @Test
    void everyChoiceOfEveryStripCanBeSetAndIsKeptByEveryPlan() {
        for (Strip strip : Strip.values()) {
            waltz();
            Spot spot = spot(strip, strip == Strip.REGISTERS || strip == Strip.BELLOWS ? 1 : 3);
            Choice second = select(spot).choices().get(1);

            model.set(second, false);

            assertThat(model.state().answer()).as("%s", second).isInstanceOf(Answer.Ready.class);
            assertThat(model.state().setup().locks())
                    .allMatch(lock -> lock.pass().equals(OptionalInt.of(spot.pass())));
            assertThat(model.state().undo()).contains("model.did.lock");
            assertThat(model.state().unsaved()).isTrue();
            for (Offer offer : model.state().offers())
                for (Lock lock : model.state().setup().locks())
                    assertThat(keeps(offer, lock)).isTrue();
            assertThat(model.state().insight().orElseThrow().locks())
                    .isEqualTo(model.state().setup().locks());
            assertThat(model.state().insight().orElseThrow().choices()).hasSizeGreaterThan(1);
        }
    }

    private static boolean keeps(Offer offer, Lock lock) {
        return offer.plan().decisions().stream()
                .filter(decision -> lock.appliesTo(decision.pass()))
                .allMatch(decision -> {
                    if (lock instanceof Lock.Finger finger)
                        return decision.kind() != Decision.Kind.FINGER
                                || !decision.place().equals(finger.place())
                                || decision.part() != finger.note()
                                || decision.value().equals(String.valueOf(finger.finger()));
                    if (lock instanceof Lock.Turn turn)
                        return decision.kind() != Decision.Kind.TURN
                                || !decision.place().equals(turn.place())
                                || turn.turn();
                    if (lock instanceof Lock.Buttons buttons)
                        return decision.kind() != Decision.Kind.BUTTONS
                                || !decision.place().equals(buttons.place())
                                || ButtonNames.all(decision.value()).equals(buttons.buttons());
                    if (lock instanceof Lock.Register register)
                        return decision.kind() != Decision.Kind.REGISTER
                                || decision.value().equals(register.switchId());
                    return !(lock instanceof Lock.Octave octave)
                            || decision.kind() != Decision.Kind.OCTAVE
                            || decision.value().equals(String.valueOf(octave.octave()));
                });
    }

    @Test
    void whatIsSelectedIsLockedAsItIsAndFreedAgain() {
        PlannerState before = waltz();
        select(spot(Strip.REGISTERS, 1));

        model.lockSelected(false);

        assertThat(model.state().setup().locks())
                .extracting(Object::getClass)
                .asList()
                .containsExactly(Lock.Register.class, Lock.Octave.class);
        assertThat(model.state().offers().get(0)).isEqualTo(before.offers().get(0));

        model.freeSelected();

        assertThat(model.state().setup().locks()).isEmpty();
        assertThat(model.state().answer()).isEqualTo(before.answer());
        assertThat(model.state().undo()).contains("model.did.free");
    }

    @Test
    void aPlaceWithoutATurnIsLockedAsOneWithout() {
        PlannerState state = waltz();
        int measure = 3;
        WrittenPlace place = new WrittenPlace(3, MusicalTime.ZERO);
        assertThat(values(state.offers().get(0), Decision.Kind.TURN, place)).isEmpty();
        model.select(Optional.of(new Selection(0, new Spot(Strip.BELLOWS, measure, 1, place, 0))));
        assertThat(model.state().insight().orElseThrow().here()).isEmpty();

        model.lockSelected(true);

        assertThat(model.state().setup().locks()).containsExactly(new Lock.Turn(OptionalInt.empty(), place, false));
    }

    @Test
    void lockingWithNothingSelectedDoesNothing() {
        PlannerState before = waltz();

        model.lockSelected(true);
        model.freeSelected();
        model.freeAll();

        assertThat(model.state()).isEqualTo(before);
    }

    @Test
    void aSelectionOutsideTheOffersIsRefused() {
        waltz();

        assertThatThrownBy(() -> model.select(Optional.of(new Selection(4, spot(Strip.FINGERS, 0)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("offer of the selection is 4; allowed: 0 to 3");
    }

    @Test
    void aSelectionEndsWhenTheTuneIsPlayedOtherwise() {
        waltz();
        select(spot(Strip.FINGERS, 5));

        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(1)));

        assertThat(model.state().selection()).isEmpty();
        assertThat(model.state().insight()).isEmpty();
    }

    @Test
    void aLeaningTakesOverItsWeightsAlone() {
        waltz();
        model.setTaste(Taste.PLAIN.with("bellows.turns", 500));
        Leaning leaning = States.packs().providers().stream()
                .flatMap(pack -> pack.leanings().stream())
                .filter(one -> !one.weights().containsKey("bellows.turns"))
                .findFirst()
                .orElseThrow();

        model.lean(leaning);

        Taste taste = model.state().setup().player().taste();
        assertThat(taste.perMille("bellows.turns")).isEqualTo(500);
        leaning.weights()
                .forEach((rule, weight) -> assertThat(taste.perMille(rule)).isEqualTo(weight));
        assertThat(model.state().undo()).contains("model.did.lean");
    }

    @Test
    void planningWithoutARuleLeavesItOut() {
        waltz();

        model.planWithout("bellows.turns");

        assertThat(model.state().offers().get(0).plan().bellows().costByRule()).doesNotContainKey("bellows.turns");
        assertThat(model.state().undo()).contains("model.did.without");
        model.undo();
        assertThat(model.state().offers().get(0).plan().bellows().costByRule()).containsKey("bellows.turns");
    }

    @Test
    void stripsAreHiddenAndShownAgain() {
        waltz();

        model.show(Strip.FINGERS, false);
        model.show(Strip.FINGERS, false);
        assertThat(model.state().strips()).isEqualTo(EnumSet.complementOf(EnumSet.of(Strip.FINGERS)));
        model.show(Strip.FINGERS, true);

        assertThat(model.state().strips()).isEqualTo(EnumSet.allOf(Strip.class));
        assertThat(model.state().unsaved()).isFalse();
    }

    @Test
    void planningAgainGivesTheSameAnswer() {
        PlannerState before = waltz();

        model.planAgain();

        assertThat(model.state()).isEqualTo(before);
    }

    @Test
    void listenersAreToldOfTheLastStateAndNoMoreOnceRemoved() {
        List<PlannerState> told = new ArrayList<>();
        Consumer<PlannerState> listener = told::add;
        model.addListener(listener);
        model.setReading(new Reading.AsPlayed());
        model.removeListener(listener);
        model.setReading(new Reading.AsWritten());

        assertThat(told).hasSize(1);
        assertThat(told.get(0).reading()).isEqualTo(new Reading.AsPlayed());
    }
}
