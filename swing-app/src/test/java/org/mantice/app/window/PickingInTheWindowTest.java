package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.MixedFolder;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.work.AppFolder;
import org.mantice.app.work.ProfileShelf;
import org.mantice.app.work.RememberedFile;

/** A tune of a book, and the part with the melody: all but the dialogs. Everything happens at once. */
class PickingInTheWindowTest {
    @TempDir
    Path folder;

    private final FakeTalk talk = new FakeTalk();
    private final Threads threads = new Threads(Runnable::run, Runnable::run);
    private Keeping keeping;
    private PlannerModel model;
    private Papers papers;
    private OpeningWork opening;
    private Path book;

    @BeforeEach
    void start() throws IOException {
        AppFolder app = new AppFolder(folder.resolve("settings"), folder.resolve("state"), notice -> {});
        keeping = new Keeping(new RememberedFile(app), new ProfileShelf(app), threads);
        model = Planners.empty();
        papers = new Papers(model);
        opening = new OpeningWork(model, papers, keeping, threads, talk);
        StringBuilder text = new StringBuilder("M:4/4\nL:1/4\n\n");
        for (String title : List.of("Frost", "L'été", "Harvest"))
            text.append("X:1\nT:").append(title).append("\nK:C\n\"C\"CEGE|\"G\"DGBd|\n\n");
        book = Files.writeString(folder.resolve("l'almanach.txt"), text.toString());
    }

    private String title() {
        return model.state()
                .tune()
                .map(OpenTune::read)
                .map(read -> read.tune().title())
                .orElse("");
    }

    @Test
    void ofABookTheChosenTuneIsOpenedAndChosenFirstTheNextTime() {
        talk.title = Optional.of("L'été");

        opening.open(List.of(book));

        assertThat(title()).isEqualTo("L'été");
        assertThat(PickingWork.hasOthers(model.state())).isTrue();
        assertThat(keeping.remembered().chosenOf(book)).contains("#2");
        opening.openFirst(Optional.empty(), EarlyReading.ofExample());
        opening.open(List.of(book));
        assertThat(talk.asked).containsExactly("tune of 3", "tune of 3, last #2");
    }

    @Test
    void anotherTuneOfTheBookFollows() {
        talk.title = Optional.of("Frost");
        opening.open(List.of(book));
        talk.title = Optional.of("Harvest");

        opening.picking().another();

        assertThat(title()).isEqualTo("Harvest");
        assertThat(talk.asked).last().isEqualTo("tune of 3, last #1");
        assertThat(papers.baseName()).isEqualTo("l'almanach-3");
    }

    @Test
    void whoChoosesNothingKeepsWhatIsOpen() {
        talk.title = Optional.of("Frost");
        opening.open(List.of(book));
        talk.title = Optional.empty();

        opening.picking().another();

        assertThat(title()).isEqualTo("Frost");
        assertThat(talk.said).isEmpty();
    }

    @Test
    void anExampleIsNoBook() {
        opening.openFirst(Optional.empty(), EarlyReading.ofExample());

        assertThat(PickingWork.hasOthers(model.state())).isFalse();
        assertThat(talk.asked).isEmpty();
    }

    @Test
    void theMelodyIsTakenFromAnotherPartOfAMidiFile() throws IOException {
        Path midi = MixedFolder.find(MixedFolder.fill(folder.resolve("mixed")), "l'orgue.txt");
        opening.open(List.of(midi));
        assertThat(PickingWork.hasMelodyToChoose(model.state())).isTrue();
        talk.part = Optional.of("Accords");

        opening.picking().melody(Runnable::run);

        OpenTune now = model.state().tune().orElseThrow();
        assertThat(now.read().melody().part().name()).isEqualTo("Accords");
        assertThat(now.part()).contains(now.read().melody().part().id());
    }

    @Test
    void nothingIsLostByLookingAtWhereTheMelodyCameFrom() throws IOException {
        Path midi = MixedFolder.find(MixedFolder.fill(folder.resolve("mixed")), "l'orgue.txt");
        opening.open(List.of(midi));
        talk.part = Optional.of("Chant");

        opening.picking().melody(then -> talk.asked.add("before losing"));

        assertThat(talk.asked).containsExactly("melody of 2");
    }

    /** What the command line reads, the window opens too, whatever its encoding, ending or name. */
    @Test
    void everyTuneOfAMixedFolderIsOpened() throws IOException {
        Path mixed = MixedFolder.fill(folder.resolve("Zoë's tunes"));

        MixedFolder.TUNES.forEach((name, title) -> {
            opening.open(List.of(MixedFolder.find(mixed, name)));
            assertThat(title()).as(name).isEqualTo(title);
        });
        assertThat(talk.said).isEmpty();
    }

    @Test
    void whatIsNoTuneIsSaidByNameAndLeavesWhatIsOpen() throws IOException {
        Path mixed = MixedFolder.fill(folder.resolve("mixed"));
        opening.open(List.of(MixedFolder.find(mixed, "wide.abc")));

        for (String other : MixedFolder.OTHERS) opening.open(List.of(mixed.resolve(other)));

        assertThat(title()).isEqualTo("Łąka");
        assertThat(talk.said).hasSameSizeAs(MixedFolder.OTHERS);
        for (String other : MixedFolder.OTHERS) assertThat(talk.said).anyMatch(said -> said.contains(other));
    }
}
