package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.Main;
import org.mantice.app.model.Answer;
import org.mantice.app.model.DirectBackground;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.work.AppFolder;
import org.mantice.app.work.ProfileShelf;
import org.mantice.app.work.RecoveryCopy;
import org.mantice.app.work.RecoveryWriter;
import org.mantice.app.work.Remembered;
import org.mantice.app.work.RememberedFile;
import org.mantice.plan.Lock;

/** Opening, saving, bringing back: all but the dialogs. Everything happens at once, on the test's thread. */
class FilesInTheWindowTest {
    private static final Path EXAMPLES = Path.of(System.getProperty("mantice.root", ".."), "examples");

    @TempDir
    Path folder;

    private AppFolder app;
    private final FakeTalk talk = new FakeTalk();
    private final Threads threads = new Threads(Runnable::run, Runnable::run);
    private Keeping keeping;
    private PlannerModel model;
    private Papers papers;
    private OpeningWork opening;
    private SavingWork saving;

    @BeforeEach
    void start() {
        app = new AppFolder(folder.resolve("settings"), folder.resolve("state"), notice -> talk.say(notice::text));
        keeping = new Keeping(new RememberedFile(app), new ProfileShelf(app), threads);
        model = Planners.empty();
        papers = new Papers(model);
        opening = new OpeningWork(model, papers, keeping, threads, talk);
        saving = new SavingWork(model, papers, keeping, threads, talk);
    }

    private Path tune(String name) {
        try {
            Path copy = folder.resolve(name + ".musicxml");
            if (!Files.exists(copy)) Files.copy(EXAMPLES.resolve("tunes").resolve(name + ".musicxml"), copy);
            return copy;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void decide() {
        model.lock(new Lock.Register(OptionalInt.empty(), "clarinet"));
    }

    @Test
    void aTuneIsOpenedPlannedAndRemembered() {
        Path file = tune("the-rusty-gate");

        opening.open(List.of(file));

        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
        assertThat(keeping.remembered().recent())
                .extracting(Remembered.Recent::file)
                .containsExactly(file.toAbsolutePath());
        assertThat(talk.said).isEmpty();
    }

    @Test
    void ofSeveralFilesTheFirstThatCanBeOpenedIsAndTheRestIsSaid() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.musicxml"), "<score-partwise>");

        opening.open(List.of(broken, tune("the-rusty-gate"), tune("five-steps-to-the-ferry")));

        assertThat(model.state().tune().orElseThrow().read().tune().title()).isEqualTo("The Rusty Gate");
        assertThat(talk.said).hasSize(2);
        assertThat(talk.said.get(0)).contains("broken.musicxml");
        assertThat(talk.said.get(1))
                .contains("five-steps-to-the-ferry.musicxml")
                .doesNotContain("rusty");
    }

    @Test
    void aFileThatIsNoTuneIsSaidAndLeavesWhatIsOpen() throws IOException {
        opening.openFirst(Optional.empty(), EarlyReading.ofExample());
        Path text = Files.writeString(folder.resolve("letter.txt"), "Dear Runa");

        opening.open(List.of(text));

        assertThat(talk.said).singleElement().asString().contains("letter.txt");
        assertThat(model.state().tune().orElseThrow().read().tune().title()).isEqualTo("Lanterns at the Weir");
        assertThat(keeping.remembered().recent()).isEmpty();
    }

    @Test
    void aPlanIsSavedAndOpenedAgainWithItsDecisions() {
        opening.open(List.of(tune("the-rusty-gate")));
        decide();
        Path plan = folder.resolve("mine.plan.json");
        talk.file = Optional.of(plan);

        saving.save(() -> {});
        assertThat(talk.asked).containsExactly("save the-rusty-gate.plan.json");
        assertThat(papers.isUnsaved()).isFalse();
        decide();
        model.freeAll();
        opening.open(List.of(plan));

        assertThat(model.state().setup().locks()).containsExactly(new Lock.Register(OptionalInt.empty(), "clarinet"));
        assertThat(papers.savedTo()).contains(plan);
        assertThat(papers.isUnsaved()).isFalse();
    }

    @Test
    void theSecondSaveAsksNothingAndKeepsTheOldFile() throws IOException {
        opening.open(List.of(tune("the-rusty-gate")));
        Path plan = folder.resolve("mine.plan.json");
        talk.file = Optional.of(plan);
        saving.save(() -> {});
        byte[] first = Files.readAllBytes(plan);
        talk.asked.clear();

        decide();
        saving.save(() -> {});

        assertThat(talk.asked).isEmpty();
        assertThat(Files.readAllBytes(plan)).isNotEqualTo(first);
        assertThat(Files.readAllBytes(folder.resolve("mine.plan.json.bak"))).isEqualTo(first);
    }

    @Test
    void anExistingFileIsReplacedOnlyAfterAsking() throws IOException {
        opening.open(List.of(tune("the-rusty-gate")));
        Path plan = Files.writeString(folder.resolve("precious.json"), "precious");
        talk.file = Optional.of(plan);
        talk.agrees = false;

        saving.saveAs(() -> {});

        assertThat(talk.asked).contains("overwrite");
        assertThat(Files.readString(plan)).isEqualTo("precious");
    }

    @Test
    void aFolderThatCannotBeWrittenToIsSaidAndNothingCountsAsSaved() {
        opening.open(List.of(tune("the-rusty-gate")));
        decide();
        talk.file = Optional.of(folder.resolve("not-there").resolve("mine.plan.json"));

        saving.saveAs(() -> talk.noted.add("went on"));

        assertThat(talk.said).singleElement().asString().contains("mine.plan.json");
        assertThat(papers.isUnsaved()).isTrue();
        assertThat(talk.noted).isEmpty();
    }

    /** What the window exports is, byte for byte, what the command line prints for the same plan. */
    @Test
    void exportIsWhatTheCommandLineWrites() throws IOException {
        Path file = tune("five-steps-to-the-ferry");
        opening.open(List.of(file));
        Path out = folder.resolve("out.plan.json");
        talk.file = Optional.of(out);
        model.choose(0);

        saving.export();

        java.io.ByteArrayOutputStream printed = new java.io.ByteArrayOutputStream();
        Main.run(
                new String[] {"plan", file.toString(), "--json", "--alternatives", "4"},
                new java.io.PrintStream(printed, true, java.nio.charset.StandardCharsets.UTF_8),
                new java.io.PrintStream(
                        java.io.OutputStream.nullOutputStream(), true, java.nio.charset.StandardCharsets.UTF_8));
        assertThat(Files.readString(out)).isEqualTo(printed.toString(java.nio.charset.StandardCharsets.UTF_8));
        assertThat(papers.savedTo()).isEmpty();
    }

    @Test
    void workIsLostOnlyIfThePlayerSaysSo() {
        opening.open(List.of(tune("the-rusty-gate")));
        int[] closed = {0};

        saving.beforeLosing(() -> closed[0]++);
        assertThat(closed[0]).isEqualTo(1);
        decide();
        talk.unsaved = Dialogs.Unsaved.CANCEL;
        saving.beforeLosing(() -> closed[0]++);
        assertThat(closed[0]).isEqualTo(1);
        talk.unsaved = Dialogs.Unsaved.SAVE;
        talk.file = Optional.empty();
        saving.beforeLosing(() -> closed[0]++);
        assertThat(closed[0]).as("the chooser was left").isEqualTo(1);
        talk.file = Optional.of(folder.resolve("kept.plan.json"));
        saving.beforeLosing(() -> closed[0]++);
        assertThat(closed[0]).isEqualTo(2);
        assertThat(folder.resolve("kept.plan.json")).exists();
        decide();
        model.freeAll();
        talk.unsaved = Dialogs.Unsaved.LOSE;
        saving.beforeLosing(() -> closed[0]++);
        assertThat(closed[0]).isEqualTo(3);
    }

    @Test
    void aPlanWhoseTuneIsGoneAsksWhereItIs() throws IOException {
        Path file = tune("the-rusty-gate");
        opening.open(List.of(file));
        Path plan = folder.resolve("mine.plan.json");
        talk.file = Optional.of(plan);
        saving.save(() -> {});
        Path elsewhere = folder.resolve("elsewhere.musicxml");
        Files.move(file, elsewhere);
        talk.tune = Optional.of(elsewhere);

        opening.open(List.of(plan));

        assertThat(talk.asked).contains("find " + file);
        assertThat(papers.savedTo()).contains(plan);
        assertThat(model.state().answer()).isInstanceOf(Answer.Ready.class);
    }

    @Test
    void aPlanWhoseTuneHasChangedIsPlannedAnewIfWanted() throws IOException {
        Path file = tune("the-rusty-gate");
        opening.open(List.of(file));
        Path plan = folder.resolve("mine.plan.json");
        talk.file = Optional.of(plan);
        saving.save(() -> {});
        Files.writeString(file, Files.readString(file).replace("The Rusty Gate", "The Oiled Gate"));

        opening.open(List.of(plan));

        assertThat(talk.asked).contains("anew");
        assertThat(model.state().tune().orElseThrow().read().tune().title()).isEqualTo("The Oiled Gate");
        assertThat(papers.savedTo()).isEmpty();
    }

    @Test
    void aRecentFileThatIsGoneIsSaidAndMarked() throws IOException {
        Path file = tune("the-rusty-gate");
        opening.open(List.of(file));
        Files.delete(file);

        opening.openRecent(file);

        assertThat(talk.said).singleElement().asString().contains("not there any more");
        assertThat(keeping.remembered().recent().get(0).missing()).isTrue();
    }

    @Test
    void profilesAreTakenWhenTheyAreOpened() {
        opening.open(List.of(
                EXAMPLES.resolve("accordions/pims-26-key-48-bass.accordion.json"),
                EXAMPLES.resolve("players/pim-haldersen.player.json")));

        assertThat(model.state().setup().accordion().id()).isEqualTo("pims-26-key-48-bass");
        assertThat(model.state().setup().player().id()).isEqualTo("pim-haldersen");
        assertThat(keeping.remembered().profiles()).hasSize(2);
        assertThat(talk.said).isEmpty();
    }

    @Test
    void aPlayerIsSavedWithItsWeightsAndFoundAgain() {
        opening.openFirst(Optional.empty(), EarlyReading.ofExample());
        model.setTaste(model.state().setup().player().taste().with("bellows.even-strokes", 2_000));
        talk.name = Optional.of("Linnea");

        saving.savePlayer();

        assertThat(talk.said).isEmpty();
        assertThat(model.state().setup().player().name()).isEqualTo("Linnea");
        Keeping nextStart = new Keeping(new RememberedFile(app), new ProfileShelf(app), threads);
        nextStart.refresh();
        assertThat(nextStart.players())
                .filteredOn(player -> player.name().equals("Linnea"))
                .singleElement()
                .satisfies(player -> assertThat(player.taste().perMille("bellows.even-strokes"))
                        .isEqualTo(2_000));
        saving.savePlayer();
        assertThat(talk.asked).contains("overwrite player Linnea");
        assertThat(nextStart.players())
                .filteredOn(player -> player.name().equals("Linnea"))
                .hasSize(1);
    }

    private RecoveryWork recovery(RecoveryCopy copy) {
        RecoveryWriter writer =
                new RecoveryWriter(copy, (delay, work) -> work.run(), InstantSource.system(), Duration.ZERO);
        return new RecoveryWork(
                model, papers, threads, talk, new RecoveryWork.Copies(copy, writer, new DirectBackground()));
    }

    @Test
    void unsavedWorkOutlivesACrashAndStaysUnsaved() throws IOException {
        RecoveryWork crashed = recovery(new RecoveryCopy(app, InstantSource.system()));
        opening.open(List.of(tune("the-rusty-gate")));
        decide();
        leaveAsAfterACrash(crashed);
        start();
        talk.recovery = new Dialogs.RecoveryAnswer(Dialogs.Recovery.BRING_BACK, 0);

        int[] otherwise = {0};
        RecoveryCopy own = new RecoveryCopy(app, InstantSource.system());
        recovery(own).offer(own.findAbandoned(), () -> otherwise[0]++);

        assertThat(talk.asked).contains("recover 1");
        assertThat(model.state().setup().locks()).containsExactly(new Lock.Register(OptionalInt.empty(), "clarinet"));
        assertThat(papers.isUnsaved()).isTrue();
        assertThat(otherwise[0]).isZero();
    }

    /** The copy stays and its owner's lock is gone. */
    private void leaveAsAfterACrash(RecoveryWork owner) throws IOException {
        Path copies = folder.resolve("state/recovery");
        Path copy;
        try (Stream<Path> files = Files.list(copies)) {
            copy = files.filter(file -> file.toString().endsWith(".recovery.zip"))
                    .findFirst()
                    .orElseThrow();
        }
        byte[] bytes = Files.readAllBytes(copy);
        owner.close();
        Files.write(copies.resolve("0a1b2c3d-0000-4000-8000-000000000000.recovery.zip"), bytes);
    }

    @Test
    void nothingIsOfferedAfterAnOrderlyEnd() {
        RecoveryCopy copy = new RecoveryCopy(app, InstantSource.system());
        RecoveryWork recovery = recovery(copy);
        opening.open(List.of(tune("the-rusty-gate")));
        decide();
        recovery.close();

        int[] otherwise = {0};
        RecoveryCopy own = new RecoveryCopy(app, InstantSource.system());
        recovery(own).offer(own.findAbandoned(), () -> otherwise[0]++);

        assertThat(talk.asked).isEmpty();
        assertThat(otherwise[0]).isEqualTo(1);
    }
}
