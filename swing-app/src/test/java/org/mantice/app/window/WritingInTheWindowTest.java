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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.Calls;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.work.AppFolder;
import org.mantice.app.work.ProfileShelf;
import org.mantice.app.work.RememberedFile;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;

/** The tune as MusicXML out of the window: all but the dialog. Everything happens at once. */
class WritingInTheWindowTest {
    @TempDir
    Path folder;

    private final FakeTalk talk = new FakeTalk();
    private PlannerModel model;
    private SavingWork saving;
    private WritingWork writing;
    private Path source;

    @BeforeEach
    void openATune() throws IOException {
        Threads threads = new Threads(Runnable::run, Runnable::run);
        AppFolder app = new AppFolder(folder.resolve("settings"), folder.resolve("state"), notice -> {});
        Keeping keeping = new Keeping(new RememberedFile(app), new ProfileShelf(app), threads);
        model = Planners.empty();
        Papers papers = new Papers(model);
        saving = new SavingWork(model, papers, keeping, threads, talk);
        writing = new WritingWork(model, papers, keeping, threads, talk);
        source = Files.copy(Calls.tune("the-rusty-gate"), folder.resolve("the-rusty-gate.musicxml"));
        new OpeningWork(model, papers, keeping, threads, talk).open(List.of(source));
    }

    private static Tune read(Path file) {
        return new TuneReader().read(file).tune();
    }

    @ParameterizedTest
    @CsvSource({"l'été à Noël.musicxml, <", "gate.mxl, P", "gate.xml, <", "gate.MXL, P"})
    void theNameSaysHowItIsWrittenAndItReadsBackAsTheSameTune(String name, char begin) throws IOException {
        talk.file = Optional.of(folder.resolve(name));

        writing.write();

        assertThat(talk.asked).containsExactly("score the-rusty-gate.musicxml");
        assertThat(talk.noted).singleElement().asString().contains(name);
        assertThat((char) Files.readAllBytes(folder.resolve(name))[0]).isEqualTo(begin);
        assertThat(read(folder.resolve(name))).isEqualTo(read(source));
    }

    @Test
    void aNameWithoutEndingGetsOne() {
        talk.file = Optional.of(folder.resolve("no. 1"));

        writing.write();

        assertThat(read(folder.resolve("no. 1.musicxml"))).isEqualTo(read(source));
    }

    /** With a plan chosen, what the command line writes of that plan's file. */
    @Test
    void everyTimeThroughIsWrittenOutAsTheCommandLineDoesForThePlan() throws IOException {
        talk.file = Optional.of(folder.resolve("chosen.plan.json"));
        saving.export();
        talk.file = Optional.of(folder.resolve("out.musicxml"));
        talk.writtenOut = true;

        writing.write();

        Path fromCall = folder.resolve("from the command line");
        Calls.call("write", folder.resolve("chosen.plan.json"), "--out", fromCall);
        assertThat(folder.resolve("out.musicxml")).hasSameBinaryContentAs(fromCall.resolve("chosen.musicxml"));
        assertThat(read(folder.resolve("out.musicxml")).measures())
                .hasSizeGreaterThan(read(source).measures().size());
    }

    @Test
    void theBassStaffOfThePlanIsWrittenAsTheCommandLineDoes() throws IOException {
        talk.file = Optional.of(folder.resolve("chosen.plan.json"));
        saving.export();
        talk.file = Optional.of(folder.resolve("out.musicxml"));
        talk.writtenOut = true;
        talk.bassStaff = true;

        writing.write();

        Path fromCall = folder.resolve("from the command line");
        Calls.call("write", folder.resolve("chosen.plan.json"), "--bass-staff", "--out", fromCall);
        assertThat(folder.resolve("out.musicxml")).hasSameBinaryContentAs(fromCall.resolve("chosen.musicxml"));
        assertThat(read(folder.resolve("out.musicxml")).hasBassStaff()).isTrue();
    }

    @Test
    void theTunesOwnFileIsNeverWrittenOver() throws IOException {
        byte[] before = Files.readAllBytes(source);
        talk.file = Optional.of(source);

        writing.write();

        assertThat(Files.readAllBytes(source)).isEqualTo(before);
        assertThat(talk.said).singleElement().asString().contains("the-rusty-gate.musicxml", "another name");
    }

    @Test
    void anotherFileIsReplacedOnlyAfterAsking() throws IOException {
        Path there = Files.writeString(folder.resolve("precious.musicxml"), "precious");
        talk.file = Optional.of(there);
        talk.agrees = false;

        writing.write();

        assertThat(talk.asked).contains("overwrite");
        assertThat(Files.readString(there)).isEqualTo("precious");
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        talk.file = Optional.of(folder.resolve("nowhere").resolve("gate.musicxml"));

        writing.write();

        assertThat(talk.said).singleElement().asString().contains("gate.musicxml");
        assertThat(talk.noted).isEmpty();
    }
}
