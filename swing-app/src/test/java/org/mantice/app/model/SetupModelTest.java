package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.app.words.Words;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.reading.Skipped;
import org.mantice.reading.SkippedWhat;
import org.mantice.tune.Loudness;

class SetupModelTest {
    private static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final Words GERMAN = Words.of(Locale.GERMAN);

    @Test
    void whatIsAssumedIsSaidToBeAssumed() {
        SetupModel setup = SetupModel.of(state("five-steps-to-the-ferry"), ENGLISH);

        assertThat(setup.tempo()).isEqualTo(new SetupModel.Setting(112, false, "assumed: 112"));
        assertThat(setup.times()).isEqualTo(new SetupModel.Setting(2, false, "assumed: 2"));
    }

    @Test
    void whatTheFileWritesIsSaidToBeWritten() {
        int written = 0;
        for (String tune : States.TUNES) {
            PlannerState state = state(tune);
            boolean assumed = state.performance().orElseThrow().settings().tempoAssumed();
            String said = SetupModel.of(state, ENGLISH).tempo().otherwise();

            assertThat(said).as(tune).startsWith(assumed ? "assumed: " : "as written: ");
            if (!assumed) written++;
        }
        assertThat(written).isPositive();
    }

    @Test
    void aChosenTempoStandsBesideWhatWouldHoldWithoutIt() {
        PlannerState state =
                States.wishing(state("five-steps-to-the-ferry"), Wishes.NONE.withTempo(OptionalInt.of(90)));

        assertThat(SetupModel.of(state, ENGLISH).tempo()).isEqualTo(new SetupModel.Setting(90, true, "assumed: 112"));
    }

    @Test
    void theTempoCountsFeltBeats() {
        for (String tune : States.TUNES) {
            PlannerState state = state(tune);
            SetupModel assumed = SetupModel.of(state, ENGLISH);

            // Choosing the number shown gives the same tempo, but for the rounding to whole beats.
            PlannerState chosen = States.wishing(
                    state, Wishes.NONE.withTempo(OptionalInt.of(assumed.tempo().value())));
            assertThat(SetupModel.of(chosen, ENGLISH).tempo().value())
                    .as(tune)
                    .isEqualTo(assumed.tempo().value());
            assertThat(assumed.beat()).as(tune).isNotBlank();
        }
    }

    @Test
    void theKeyThatResultsIsNamed() {
        PlannerState state = state("lanterns-at-the-weir");
        String written = SetupModel.of(state, ENGLISH).key();
        PlannerState shifted = States.wishing(state, Wishes.NONE.withTransposition(2));

        assertThat(written).matches("[A-G][♯♭]? (major|minor|.*)");
        assertThat(SetupModel.of(shifted, ENGLISH).key()).isNotEqualTo(written).isNotBlank();
        assertThat(SetupModel.of(shifted, GERMAN).key()).matches("[A-Ga-g][♯♭]?-(Dur|Moll)");
    }

    @Test
    void aChosenLoudnessIsInForce() {
        PlannerState state = state("five-steps-to-the-ferry");
        PlannerState loud = States.wishing(state, Wishes.NONE.withLoudness(Optional.of(Loudness.F)));

        assertThat(SetupModel.of(state, ENGLISH).loudnessLevel().chosen()).isFalse();
        assertThat(SetupModel.of(loud, ENGLISH).loudness()).isEqualTo(Loudness.F);
        assertThat(SetupModel.of(loud, ENGLISH).loudnessLevel().chosen()).isTrue();
    }

    @Test
    void whatTheTuneDoesNotHoldIsListed() {
        Skipped trill = new Skipped(SkippedWhat.NOTE_MARK, List.of("trill-mark"), List.of("3", "7"), 2);
        Skipped cues = new Skipped(SkippedWhat.CUE_NOTES, List.of(), List.of("5"), 1);
        PlannerState state = States.leavingOut(state("lanterns-at-the-weir"), List.of(trill, cues));

        List<String> english = SetupModel.of(state, ENGLISH).leftOut();
        List<String> german = SetupModel.of(state, GERMAN).leftOut();

        assertThat(english).hasSize(2).doesNotContainAnyElementsOf(german);
        assertThat(english.get(0)).contains("3, 7");
        assertThat(SetupModel.of(state("lanterns-at-the-weir"), ENGLISH).leftOut())
                .isEmpty();
    }

    @Test
    void withoutATuneOnlyTheTitleSpeaks() {
        SetupModel setup = SetupModel.of(States.nothing(), ENGLISH);

        assertThat(setup.open()).isFalse();
        assertThat(setup.title()).isEqualTo("No tune is open");
    }

    @Test
    void airIsAnEstimateUntilTheAccordionIsMeasured() {
        assertThat(SetupModel.of(States.nothing(), ENGLISH).air()).contains("estimates");
    }

    @Test
    void thePlanningIsToldInWords() {
        PlannerState ready = state("lanterns-at-the-weir");
        List<Offer> offers = ready.offers();

        assertThat(words(ready, new Answer.Working(offers, 2, 4))).isEqualTo("Planning: 2 of 4 plans found");
        assertThat(words(ready, new Answer.Ready(offers, offers.size()))).isEqualTo(offers.size() + " plans found");
        assertThat(words(ready, new Answer.Ready(offers, 12))).startsWith(offers.size() + " of 12 plans found: no");
        assertThat(words(ready, new Answer.Stopped(List.of()))).isEqualTo("Stopped before a plan was found");
        assertThat(words(ready, new Answer.Stopped(offers.subList(0, 1)))).isEqualTo("Stopped: 1 plan found");
        assertThat(words(ready, new Answer.Nothing())).isEqualTo("Open a tune to plan it.");
    }

    @Test
    void whatCannotBePlayedSaysWhy() {
        PlannerState ready = state("lanterns-at-the-weir");
        Obstacle one = Obstacle.of(
                Sentence.of("bellows-cannot-meet-lock", "The bellows cannot meet what is locked: {0}.", "no turn"),
                List.of());

        assertThat(words(ready, new Answer.NotPlayable(List.of(), List.of(one))))
                .startsWith("Not playable as asked: ")
                .contains("The bellows cannot meet what is locked");
        assertThat(words(ready, new Answer.NotPlayable(List.of(), List.of(one, one, one))))
                .endsWith("(and 2 more reasons)");
        assertThat(words(ready, new Answer.NotPlayable(List.of(), List.of()))).isEqualTo("Not playable as asked");
        assertThat(words(ready, new Answer.Failed(List.of(), new IllegalStateException("boom"), "")))
                .startsWith("Could not be planned: ")
                .contains("boom");
    }

    @Test
    void onlyPlanningUnderWayIsWorking() {
        PlannerState ready = state("lanterns-at-the-weir");
        Answer working = new Answer.Working(ready.offers(), 1, 4);

        PlanningProgress progress = PlanningProgress.of(States.answering(ready, working), ENGLISH);

        assertThat(progress.working()).isTrue();
        assertThat(progress.found()).isEqualTo(1);
        assertThat(progress.asked()).isEqualTo(4);
        assertThat(PlanningProgress.of(ready, ENGLISH).working()).isFalse();
    }

    private static String words(PlannerState state, Answer answer) {
        return PlanningProgress.of(States.answering(state, answer), ENGLISH).text();
    }

    private static PlannerState state(String tune) {
        return States.of(tune).comparingAll();
    }
}
