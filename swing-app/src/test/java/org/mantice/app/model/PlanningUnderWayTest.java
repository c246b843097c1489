package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.file.PlanFile;
import org.mantice.plan.Lock;
import org.mantice.player.Taste;

/** With work and news in steps: what is shown between, and what comes too late. */
class PlanningUnderWayTest {
    private static final String TURNS = "bellows.turns";

    private final SteppedBackground background = new SteppedBackground();
    private final PlannerModel model = new PlannerModel(States.packs(), background, SmallTunes.setup());
    private final List<PlannerState> seen = new ArrayList<>();

    @BeforeEach
    void opened() {
        model.addListener(seen::add);
        model.open(SmallTunes.open(SmallTunes.WALTZ));
        assertThat(model.state().answer()).isEqualTo(new Answer.Working(List.of(), 0, 4));
    }

    private PlannerState ready() {
        background.runAll();
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        return model.state();
    }

    private void weigh(int perMille) {
        model.setTaste(Taste.PLAIN.with(TURNS, perMille), true);
    }

    @Test
    void theTuneAsPlayedIsKnownBeforeAnyPlan() {
        background.work();
        background.tell(1);

        assertThat(model.state().performance()).isPresent();
        assertThat(model.state().offers()).isEmpty();
        assertThat(model.state().isWorking()).isTrue();
    }

    @Test
    void twoAreComparedAsSoonAsThereAreTwo() {
        background.work();
        background.tell(2);
        assertThat(model.state().compared()).containsExactly(0);
        assertThat(model.state().chosen()).isZero();
        assertThat(model.state().differences()).isEmpty();

        background.tell(1);

        assertThat(model.state().compared()).containsExactly(0, 1);
        assertThat(model.state().differences()).isNotEmpty();
        assertThat(model.state().answer()).isInstanceOf(Answer.Working.class);
        assertThat(((Answer.Working) model.state().answer()).fresh()).isEqualTo(2);
    }

    @Test
    void whatWasFoundStaysWhenThePlanningIsStopped() {
        background.work();
        background.tell(3);

        model.stop();
        background.tell();

        assertThat(model.state().answer()).isInstanceOf(Answer.Stopped.class);
        assertThat(model.state().offers()).hasSize(2);
        PlannerState stopped = model.state();
        model.stop();
        assertThat(model.state()).isSameAs(stopped);
    }

    @Test
    void aPlanningThatIsStoppedBeforeItBeginsNeverBegins() {
        model.stop();
        background.runAll();

        assertThat(background.begun()).isZero();
        assertThat(model.state().answer()).isEqualTo(new Answer.Stopped(List.of()));
        model.planAgain();
        ready();
    }

    @Test
    void ofManyWeightsInARowOnlyTheLastIsPlanned() {
        ready();
        int begun = background.begun();

        for (int weight = 1_100; weight <= 3_000; weight += 100) weigh(weight);
        background.runAll();

        assertThat(background.begun()).isEqualTo(begun + 1);
        assertThat(model.state().setup().player().taste().perMille(TURNS)).isEqualTo(3_000);
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        Taste taste = model.state().setup().player().taste();
        assertThat(model.state().offers())
                .allMatch(offer -> offer.cost() == offer.plan().cost(taste));
    }

    @Test
    void draggingOneWeightIsOneStepToUndo() {
        PlannerState before = ready();
        for (int weight = 1_100; weight <= 1_500; weight += 100) {
            weigh(weight);
            background.runAll();
        }

        model.undo();

        assertThat(model.state().setup()).isEqualTo(before.setup());
        assertThat(model.state().answer()).isEqualTo(before.answer());
        assertThat(model.state().undo()).isEmpty();
        assertThat(model.state().redo()).contains("model.did.weight");
    }

    @Test
    void aSecondDragOfTheSameWeightIsASecondStep() {
        ready();
        weigh(1_100);
        weigh(1_200);
        model.setTaste(Taste.PLAIN.with(TURNS, 1_200), false);
        weigh(1_300);
        weigh(1_400);
        model.setTaste(Taste.PLAIN.with(TURNS, 1_500), false);

        model.undo();

        assertThat(model.state().setup().player().taste().perMille(TURNS)).isEqualTo(1_200);
        model.undo();
        assertThat(model.state().setup().player().taste()).isEqualTo(Taste.PLAIN);
        assertThat(model.state().undo()).isEmpty();
    }

    @Test
    void weightsThatAreNotDraggedAreAStepEach() {
        ready();
        model.setTaste(Taste.PLAIN.with(TURNS, 1_100));
        model.setTaste(Taste.PLAIN.with(TURNS, 1_200));

        model.undo();

        assertThat(model.state().setup().player().taste().perMille(TURNS)).isEqualTo(1_100);
    }

    @Test
    void newsOfAnEarlierPlanningAreDroppedEvenFromABackgroundThatTellsThem() {
        ready();
        background.rude();
        weigh(9_000);
        background.work();
        int old = background.news();
        assertThat(old).isGreaterThan(2);
        background.tell(2);

        weigh(0);
        PlannerState waiting = model.state();
        background.tell(old - 2);

        assertThat(model.state()).isEqualTo(waiting);
        background.runAll();
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        assertThat(model.state().offers().get(0).plan().cost(Taste.PLAIN.with(TURNS, 0)))
                .isEqualTo(model.state().offers().get(0).cost());
    }

    @Test
    void anInsightThatComesTooLateIsDropped() {
        PlannerState state = ready();
        List<Site> sites =
                Site.of(state.offers().get(0).plan(), state.performance().orElseThrow());
        Spot first = sites.get(10).spot();
        Spot second = sites.get(20).spot();
        background.rude();
        model.select(Optional.of(new Selection(0, first)));
        background.work();
        model.select(Optional.of(new Selection(0, second)));

        background.tell();
        assertThat(model.state().insight()).isEmpty();
        background.runAll();

        assertThat(model.state().insight().orElseThrow().selection().spot()).isEqualTo(second);
    }

    @Test
    void anInsightIsAskedForOnceThePlanningIsDone() {
        PlannerState state = ready();
        Spot spot = Site.of(state.offers().get(0).plan(), state.performance().orElseThrow())
                .get(10)
                .spot();
        weigh(1_200);

        model.select(Optional.of(new Selection(0, spot)));
        assertThat(model.state().insight()).isEmpty();
        background.runAll();

        assertThat(model.state().insight().orElseThrow().selection().spot()).isEqualTo(spot);
    }

    @Test
    void theSelectionStaysInItsPlanWhereverThatStands() {
        PlannerState before = ready();
        Spot spot = Site.of(before.offers().get(1).plan(), before.performance().orElseThrow())
                .get(10)
                .spot();
        model.select(Optional.of(new Selection(1, spot)));
        background.runAll();
        model.setWishes(Wishes.NONE.withPlans(8));
        background.work();
        background.tell(2);
        assertThat(model.state().offers()).hasSize(1);
        assertThat(model.state().selection().orElseThrow().offer()).isZero();

        background.runAll();

        assertThat(Likeness.same(
                        model.state()
                                .offers()
                                .get(model.state().selection().orElseThrow().offer())
                                .plan(),
                        before.offers().get(1).plan()))
                .isTrue();
    }

    @Test
    void aPlanChosenWhileOthersArriveStaysChosen() {
        background.work();
        background.tell(3);
        model.choose(1);
        Offer chosen = model.state().chosenOffer().orElseThrow();

        background.runAll();

        assertThat(Likeness.same(model.state().chosenOffer().orElseThrow().plan(), chosen.plan()))
                .isTrue();
        model.undo();
        assertThat(model.state().chosen()).isZero();
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
    }

    @Test
    void undoBringsBackAnAnswerAtOnceAndRedoTheNext() {
        PlannerState first = ready();
        model.lock(new Lock.Octave(OptionalInt.of(1), 0));
        PlannerState second = ready();
        int begun = background.begun();

        model.undo();
        assertThat(model.state().answer()).isEqualTo(first.answer());
        assertThat(model.state().setup()).isEqualTo(first.setup());
        assertThat(model.state().unsaved()).isFalse();
        model.redo();
        assertThat(model.state().answer()).isEqualTo(second.answer());
        assertThat(model.state().setup()).isEqualTo(second.setup());
        assertThat(model.state().unsaved()).isTrue();

        background.runAll();
        assertThat(background.begun()).isEqualTo(begun);
    }

    @Test
    void undoOfAChangeUnderWayStopsItAndBringsBackTheAnswerOfBefore() {
        PlannerState first = ready();
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(1)));

        model.undo();
        background.runAll();

        assertThat(model.state().answer()).isEqualTo(first.answer());
        assertThat(model.state().setup()).isEqualTo(first.setup());
    }

    @Test
    void undoToAnAnswerThatWasNeverCompletePlansIt() {
        ready();
        model.lock(new Lock.Octave(OptionalInt.of(1), 0));
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(1)));
        ready();

        model.undo();

        assertThat(model.state().isWorking()).isTrue();
        PlannerState again = ready();
        assertThat(again.setup().locks()).hasSize(1);
        assertThat(again.performance().orElseThrow().passes()).hasSize(2);
        assertThat(again.offers())
                .allMatch(offer -> offer.plan().variation().pass(1).octave() == 0);
    }

    @Test
    void undoBringsBackWhatWasChosenAndCompared() {
        ready();
        model.compare(List.of(1, 2, 3));
        model.choose(3);
        model.lock(new Lock.Octave(OptionalInt.of(1), 0));
        ready();
        model.compare(List.of(0));

        model.undo();

        assertThat(model.state().compared()).containsExactly(1, 2, 3);
        assertThat(model.state().chosen()).isEqualTo(3);
        model.undo();
        assertThat(model.state().chosen()).isZero();
        assertThat(model.state().undo()).isEmpty();
    }

    @Test
    void unsavedTellsWhetherTheDecisionsAreOnDisk() {
        ready();
        assertThat(model.state().unsaved()).isFalse();
        model.choose(1);
        assertThat(model.state().unsaved()).isTrue();

        model.saved();
        assertThat(model.state().unsaved()).isFalse();
        model.undo();
        assertThat(model.state().unsaved()).isTrue();
        model.redo();

        assertThat(model.state().unsaved()).isFalse();
    }

    @Test
    void theOffersOfBeforeStayInViewUntilTheFirstNewOne() {
        PlannerState before = ready();
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(3)));
        background.work();
        background.tell(1);
        assertThat(model.state().offers()).isEqualTo(before.offers());
        assertThat(model.state().performance()).isEqualTo(before.performance());

        background.tell(1);

        assertThat(model.state().offers()).hasSize(1);
        assertThat(model.state().performance().orElseThrow().passes()).hasSize(3);
    }

    @Test
    void locksOfAPlaceAreShownWhileTheyAreWorkedOn() {
        PlannerState state = ready();
        Spot spot = Site.of(state.offers().get(0).plan(), state.performance().orElseThrow()).stream()
                .map(Site::spot)
                .filter(one -> one.strip() == Strip.FINGERS)
                .findFirst()
                .orElseThrow();
        model.select(Optional.of(new Selection(0, spot)));
        background.runAll();

        model.lockSelected(true);

        assertThat(model.state().isWorking()).isTrue();
        assertThat(model.state().insight().orElseThrow().locks())
                .isEqualTo(model.state().setup().locks())
                .hasSize(1);
    }

    @Test
    void aFileMadeWhileAChangeIsWorkedOnSaysWhatItsPlanWasMadeWith() {
        PlannerState before = ready();
        model.setWishes(Wishes.NONE.withTimes(OptionalInt.of(1)));
        List<PlanFile> files = new ArrayList<>();

        model.planFile(files::add);
        background.runAll();

        assertThat(files.get(0).document().settings().timesThrough()).isEqualTo(2);
        assertThat(files.get(0).document().plan())
                .isEqualTo(before.offers().get(0).plan());
    }
}
