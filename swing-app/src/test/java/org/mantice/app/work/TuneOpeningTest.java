package org.mantice.app.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.files.PlanFiles;
import org.mantice.app.model.States;
import org.mantice.fault.ManticeException;
import org.mantice.file.PlanFile;
import org.mantice.json.JsonFileException;
import org.mantice.reading.TuneReadException;

class TuneOpeningTest {
    private static final byte[] EXAMPLE = TuneContent.example().bytes();

    @TempDir
    Path temp;

    private Path tune(String name) throws IOException {
        Path file = temp.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.write(file, EXAMPLE);
    }

    /** A plan of the example which calls the tune by this name. */
    private Path plan(String name, String tuneName) {
        States states = States.of("lanterns-at-the-weir");
        PlanFile file = new PlanFiles(
                        tuneName, TuneContent.example().open(Optional.empty()).read(), Optional.empty(), States.packs())
                .of(states.planning(), states.offers().get(1).plan());
        Path path = temp.resolve(name);
        file.write(path);
        return path;
    }

    @Test
    void tuneIsOpenedUnderTheNameGiven() throws IOException {
        Path file = tune("weir.musicxml");

        Opened.Tune opened = (Opened.Tune) TuneOpening.open(file);

        assertThat(opened.tune().fileName()).isEqualTo(file.toString());
        assertThat(opened.tune().read().tune().title()).isEqualTo("Lanterns at the Weir");
        assertThat(opened.tune().read().fingerprint())
                .isEqualTo(opened.content().fingerprint());
        assertThat(opened.content().file()).contains(file.toAbsolutePath());
    }

    @Test
    void archiveAndTuneWithAnOddNameAreTunes() throws IOException {
        Path archive = temp.resolve("weir.mxl");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(archive))) {
            zip.putNextEntry(new ZipEntry("score.xml"));
            zip.write(EXAMPLE);
        }
        String text = new String(EXAMPLE, StandardCharsets.UTF_8).replace("encoding=\"UTF-8\"", "encoding=\"UTF-16\"");
        Path wide = Files.write(temp.resolve("wide.plan.json"), text.getBytes(StandardCharsets.UTF_16));

        assertThat(TuneOpening.open(archive)).isInstanceOf(Opened.Tune.class);
        assertThat(TuneOpening.open(wide)).isInstanceOf(Opened.Tune.class);
        assertThat(TuneOpening.open(tune("weir.plan.json"))).isInstanceOf(Opened.Tune.class);
    }

    @Test
    void shippedExampleIsOpenedLikeAFileAndSoAreItsPlans() {
        Opened.Tune example = TuneOpening.example();

        Opened plan = TuneOpening.open(plan("weir.plan.json", example.tune().fileName()));

        assertThat(example.tune().fileName()).isEqualTo("examples/tunes/lanterns-at-the-weir.musicxml");
        assertThat(example.content().file()).isEmpty();
        assertThat(plan).isInstanceOf(Opened.PlanWithTune.class);
    }

    @Test
    void planIsOpenedWithItsTuneBesideIt() throws IOException {
        Path tune = tune("tunes/weir.musicxml");
        Path plan = plan("a plan.json", "tunes/weir.musicxml");

        Opened.PlanWithTune opened = (Opened.PlanWithTune) TuneOpening.open(plan);

        assertThat(opened.tune().fileName()).isEqualTo("tunes/weir.musicxml");
        assertThat(opened.content().file()).contains(tune.toAbsolutePath());
        assertThat(opened.plan().plan().label()).isNotEmpty();
        assertThat(opened.file()).isEqualTo(plan);
    }

    @Test
    void planWhoseTuneIsMissingAsksForItAndGoesOn() throws IOException {
        Path plan = plan("weir.plan.json", "elsewhere/gone.musicxml");

        Opened.TuneMissing missing = (Opened.TuneMissing) TuneOpening.open(plan);
        Opened.PlanWithTune found =
                (Opened.PlanWithTune) TuneOpening.open(missing.plan(), missing.file(), tune("here.musicxml"));

        assertThat(missing.wanted()).isEqualTo("elsewhere/gone.musicxml");
        assertThat(found.tune().fileName())
                .isEqualTo(temp.resolve("here.musicxml").toString());
    }

    @Test
    void planThatNamesNoPossibleFileAsksForItsTune() throws IOException {
        Path plan = plan("weir.plan.json", "a.musicxml");
        Files.writeString(plan, Files.readString(plan).replace("\"a.musicxml\"", "\"a\\u0000b\""));

        assertThat(TuneOpening.open(plan)).isInstanceOf(Opened.TuneMissing.class);
    }

    @Test
    void planWhoseTuneHasChangedSaysSo() throws IOException {
        Path tune = tune("weir.musicxml");
        Path plan = plan("weir.plan.json", "weir.musicxml");
        Files.writeString(
                tune, new String(EXAMPLE, StandardCharsets.UTF_8).replace("Lanterns at the Weir", "Another Title"));

        Opened.TuneChanged changed = (Opened.TuneChanged) TuneOpening.open(plan);

        assertThat(changed.tune().read().tune().title()).isEqualTo("Another Title");
        assertThat(changed.plan().tune().title()).isEqualTo("Lanterns at the Weir");
    }

    @Test
    void partIsAskedForInATuneAndTakenFromAPlan() throws IOException {
        Path file = tune("weir.musicxml");

        assertThat(((Opened.Tune) TuneOpening.open(file, Optional.of("1")))
                        .tune()
                        .part())
                .contains("1");
        assertThatThrownBy(() -> TuneOpening.open(file, Optional.of("Trombone")))
                .isInstanceOf(TuneReadException.class)
                .hasMessageStartingWith(file.toString());
        assertThatThrownBy(() -> TuneOpening.open(file, Optional.of(" "))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "a.musicxml, '', EMPTY",
        "a.musicxml, '<score-partwise>', TRUNCATED",
        "a.musicxml, '\0\0\0\1', BINARY",
        "a.musicxml, 'X: 1', NO_MEASURES",
        "a.plan.json, '', EMPTY",
        "a.plan.json, '   ', EMPTY",
        "a.plan.json, '\0\0', NOT_JSON",
        "a.plan.json, '{', TRUNCATED",
        "a.musicxml, '{\"format\": \"mantice-plan\"}', MISSING",
        "a.player.json, '{\"format\": \"mantice-player\", \"version\": \"0.1\"}', WRONG_VALUE",
        "a.plan.json, '{\"format\": \"mantice-plan\", \"version\": \"7.0\"}', NEWER_VERSION",
        "a.plan.json, '{\"format\": 5}', WRONG_VALUE",
        "a.plan.json, DEEP, TOO_DEEP"
    })
    void hostileFileIsRefusedWithItsPlace(String name, String content, String code) throws IOException {
        String text = content.equals("DEEP") ? "{\"a\":" + "[".repeat(1_000_000) : content;
        Path file = Files.writeString(temp.resolve(name), text);

        assertThatThrownBy(() -> TuneOpening.open(file)).isInstanceOfSatisfying(ManticeException.class, e -> {
            assertThat(e.code()).isEqualTo(code);
            assertThat(e.place().file()).isEqualTo(file.toString());
        });
    }

    @Test
    void hugeFilesAreRefused() throws IOException {
        Path tune = temp.resolve("huge.musicxml");
        Path plan = temp.resolve("huge.plan.json");
        for (Path file : new Path[] {tune, plan})
            try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
                huge.write(file == plan ? '{' : '<');
                huge.setLength(129L * 1024 * 1024);
            }

        assertThatThrownBy(() -> TuneOpening.open(tune))
                .isInstanceOfSatisfying(TuneReadException.class, e -> assertThat(e.reason())
                        .isEqualTo(TuneReadException.Reason.TOO_LARGE));
        assertThatThrownBy(() -> TuneOpening.open(plan))
                .isInstanceOfSatisfying(JsonFileException.class, e -> assertThat(e.reason())
                        .isEqualTo(JsonFileException.Reason.TOO_LARGE));
    }

    @Test
    void planCutShortAnywhereIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(plan("weir.plan.json", "weir.musicxml"));
        for (int tenths = 1; tenths < 10; tenths++) {
            byte[] part = java.util.Arrays.copyOf(whole, whole.length * tenths / 10);
            Path file = Files.write(temp.resolve("cut.plan.json"), part);

            assertThatThrownBy(() -> TuneOpening.open(file)).isInstanceOf(JsonFileException.class);
        }
    }

    @Test
    void whatIsNotThereOrNoFileIsRefused() {
        Path device = Path.of("/dev/zero");

        assertThatThrownBy(() -> TuneOpening.open(temp.resolve("gone.musicxml")))
                .isInstanceOf(TuneReadException.class)
                .hasMessageContaining("no such file");
        assertThatThrownBy(() -> TuneOpening.open(temp)).isInstanceOf(TuneReadException.class);
        if (Files.exists(device))
            assertThatThrownBy(() -> TuneOpening.open(device))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("/dev/zero");
    }
}
