package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mantice.app.Calls.call;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.model.Answer;
import org.mantice.app.model.DirectBackground;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Setup;
import org.mantice.app.model.Wishes;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.instrument.AccordionPresets;
import org.mantice.pattern.Accompaniment;
import org.mantice.performance.ChordsPlayed;
import org.mantice.plan.Lock;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Loudness;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** What the command line writes the window reads, and what the window writes is what the command line would. */
class ReopenedPlanTest {
    private static final Path TUNE = Calls.tune("five-steps-to-the-ferry");

    private final PlannerModel model = new PlannerModel(
            Packs.ofClassPath(),
            new DirectBackground(),
            new Setup(
                    AccordionPresets.get("full-41-key-120-bass"),
                    PlayerPresets.get("medium-hand"),
                    Wishes.NONE.withPlans(3),
                    List.of()));
    private final List<PlannerState> seen = new ArrayList<>();

    @TempDir
    private Path out;

    private static OpenTune tune() throws IOException {
        return new OpenTune(
                TUNE.toString(),
                new TuneReader().read(TUNE.toString(), Files.readAllBytes(TUNE), ReadOptions.DEFAULT),
                Optional.empty());
    }

    private Path planned(int number, Object... options) {
        List<Object> words = new ArrayList<>(List.of("plan", TUNE, "--out", out));
        words.addAll(List.of(options));
        assertThat(call(words.toArray()).code()).isZero();
        return out.resolve("five-steps-to-the-ferry-" + number + PlanFile.SUFFIX);
    }

    private byte[] file() {
        List<PlanFile> files = new ArrayList<>();
        model.planFile(files::add);
        return files.get(0).bytes();
    }

    @Test
    void theChosenPlanAsAFileIsWhatTheCommandLineWrites() throws IOException {
        Path second = planned(2);
        model.open(tune());
        model.choose(1);

        assertThat(file()).isEqualTo(Files.readAllBytes(second));
    }

    @Test
    void soItIsWithEverythingChanged() throws IOException {
        Path first = planned(
                1,
                "--accordion",
                "standard-34-key-72-bass",
                "--player",
                "small-hand",
                "--tempo",
                "90",
                "--times",
                "2",
                "--transpose",
                "-2",
                "--loudness",
                "p",
                "--weight",
                "bellows.turns=2500",
                "--without",
                "fingering.weak-finger",
                "--lock",
                "turn@3:1=yes");
        model.open(tune());
        model.setTaste(PlayerPresets.get("small-hand").taste());
        model.setAccordion(AccordionPresets.get("standard-34-key-72-bass"));
        model.setPlayer(PlayerPresets.get("small-hand"));
        model.setTaste(model.state().setup().player().taste().with("bellows.turns", 2_500));
        model.planWithout("fingering.weak-finger");
        model.setWishes(new Wishes(
                OptionalInt.of(90),
                OptionalInt.of(2),
                -2,
                Optional.of(Loudness.P),
                ChordsPlayed.USUAL,
                3,
                Accompaniment.NONE));
        model.lock(new Lock.Turn(OptionalInt.empty(), place(3), true));

        assertThat(file()).isEqualTo(Files.readAllBytes(first));
    }

    /** The start of a measure by its number; the tune has no pickup. */
    private static WrittenPlace place(int measure) throws IOException {
        assertThat(tune().read().tune().measure(measure - 1).number()).isEqualTo(String.valueOf(measure));
        return new WrittenPlace(measure - 1, MusicalTime.ZERO);
    }

    @Test
    void aSavedPlanIsShownAndChosenFirstAndStaysAmongTheOffersOnce() throws IOException {
        PlanDocument saved = PlanFile.read(planned(3, "--tempo", "90", "--player", "large-hand"))
                .document();
        model.addListener(seen::add);

        model.reopen(tune(), saved);

        PlannerState first = seen.stream()
                .filter(state -> !state.offers().isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(first.offers()).extracting(offer -> offer.plan()).containsExactly(saved.plan());
        assertThat(first.chosen()).isZero();
        PlannerState state = model.state();
        assertThat(state.answer()).isInstanceOf(Answer.Ready.class);
        assertThat(state.chosenOffer().orElseThrow().plan()).isEqualTo(saved.plan());
        assertThat(state.offers()).extracting(offer -> offer.plan().decisions()).doesNotHaveDuplicates();
        assertThat(state.offers()).extracting(offer -> offer.cost()).isSorted();
        assertThat(state.setup().accordion()).isEqualTo(saved.accordion());
        assertThat(state.setup().player()).isEqualTo(saved.player());
        assertThat(state.setup().wishes().settings(tune().read().tune())).isEqualTo(saved.settings());
        assertThat(state.performance().orElseThrow().settings()).isEqualTo(saved.settings());
        assertThat(state.unsaved()).isFalse();
        assertThat(state.undo()).isEmpty();
    }

    @Test
    void aPlanThatIsSavedAgainUnchangedIsTheSameFile() throws IOException {
        Path third = planned(3, "--tempo", "90", "--without", "fingering.weak-finger", "--lock", "pass2:turn@3:1=no");

        model.reopen(tune(), PlanFile.read(third).document());

        assertThat(model.state().setup().locks()).hasSize(1);
        assertThat(file()).isEqualTo(Files.readAllBytes(third));
    }

    @Test
    void aPlanThatNoSearchWouldFindStaysAmongTheOffers() throws IOException {
        Path strange = planned(1, "--lock", "turn@3:1=yes", "--lock", "turn@4:1=yes");
        PlanDocument made = PlanFile.read(strange).document();
        PlanDocument free = new PlanDocument(
                made.engine(),
                made.tune(),
                made.settings(),
                made.accordion(),
                made.player(),
                made.packs(),
                List.of(),
                made.plan(),
                made.figures(),
                made.explanation());

        model.reopen(tune(), free);

        assertThat(model.state().offers()).hasSizeGreaterThan(1);
        assertThat(model.state().chosen()).isEqualTo(model.state().offers().size() - 1);
        assertThat(model.state().chosenOffer().orElseThrow().plan()).isEqualTo(made.plan());
    }

    @Test
    void aPlanOfAnotherTuneOrWithARuleThatIsNotHereFails() throws IOException {
        PlanDocument saved = PlanFile.read(planned(1)).document();
        Path other = Calls.tune("the-rusty-gate");
        OpenTune wrong = new OpenTune(
                other.toString(),
                new TuneReader().read(other.toString(), Files.readAllBytes(other), ReadOptions.DEFAULT),
                Optional.empty());

        model.reopen(wrong, saved);
        assertThat(cause()).hasMessageContaining("fingerprint differs");

        List<PlanDocument.PackUsed> packs = new ArrayList<>(saved.packs());
        packs.add(new PlanDocument.PackUsed("stranger", "1", "stranger.jar", List.of("stranger.rule")));
        model.reopen(
                tune(),
                new PlanDocument(
                        saved.engine(),
                        saved.tune(),
                        saved.settings(),
                        saved.accordion(),
                        saved.player(),
                        packs,
                        saved.locks(),
                        saved.plan(),
                        saved.figures(),
                        saved.explanation()));
        assertThat(cause()).hasMessageContaining("stranger.rule").hasMessageContaining("stranger.jar");
        assertThat(model.state().offers()).isEmpty();
    }

    private Throwable cause() {
        return ((Answer.Failed) model.state().answer()).cause();
    }
}
