package org.mantice.app.work;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.app.sheet.Strip;

class RememberedFileTest {
    @TempDir
    Path temp;

    private final List<Notice> notices = new ArrayList<>();
    private AppFolder folder;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = new AppFolder(temp.resolve("settings"), temp.resolve("state"), notices::add);
        Files.createDirectories(temp.resolve("state"));
    }

    private static List<Path> files(Remembered remembered) {
        return remembered.recent().stream().map(Remembered.Recent::file).toList();
    }

    private ObjectNode tree() throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(folder.remembered().toFile());
    }

    @Test
    void firstStartRemembersNothingAndSaysNothing() {
        assertThat(new RememberedFile(folder).current()).isEqualTo(Remembered.NOTHING);
        assertThat(notices).isEmpty();
    }

    @Test
    void allThatIsRememberedComesBack() {
        RememberedFile file = new RememberedFile(folder);
        Appearance look = Appearance.USUAL
                .withLanguage(Locale.GERMAN)
                .withDark(true)
                .withZoom(150)
                .withWindow(new WindowBounds(-20, 30, 1200, 800, true))
                .withStrips(EnumSet.of(Strip.BELLOWS, Strip.BUTTONS));

        Remembered written = file.change(before -> before.withRecent(temp.resolve("a.musicxml"))
                .withRecent(temp.resolve("b.plan.json"))
                .withMissing(temp.resolve("a.musicxml"))
                .withFolder(temp)
                .withAccordion("standard-37-key-96-bass")
                .withPlayer(temp.resolve("oda.player.json").toString())
                .withProfile(temp.resolve("oda.player.json"))
                .withAppearance(look));

        assertThat(new RememberedFile(folder).current()).isEqualTo(written);
        assertThat(written.recent())
                .containsExactly(
                        new Remembered.Recent(temp.resolve("b.plan.json"), false),
                        new Remembered.Recent(temp.resolve("a.musicxml"), true));
        assertThat(written.appearance()).isEqualTo(look);
        assertThat(notices).isEmpty();
    }

    @Test
    void recentFilesAreTenNewestFirstEachOnce() {
        Remembered remembered = Remembered.NOTHING;
        for (int i = 0; i < 12; i++) remembered = remembered.withRecent(temp.resolve(i + ".musicxml"));

        remembered = remembered.withRecent(temp.resolve("x/../5.musicxml"));

        assertThat(files(remembered)).hasSize(10).doesNotHaveDuplicates().startsWith(temp.resolve("5.musicxml"));
        assertThat(files(remembered)).element(1).isEqualTo(temp.resolve("11.musicxml"));
    }

    @Test
    void missingFileThatIsOpenedAgainIsNotMissing() {
        Path file = temp.resolve("a.musicxml");

        Remembered remembered =
                Remembered.NOTHING.withRecent(file).withMissing(file).withRecent(file);

        assertThat(remembered.recent()).containsExactly(new Remembered.Recent(file, false));
    }

    @Test
    void fieldsOfAnotherVersionAreKept() throws IOException {
        Files.writeString(folder.remembered(), """
                {"format": "mantice-remembered", "version": "0.7", "metronome": {"volume": 3},
                 "window": {"x": 1, "y": 2, "width": 3, "height": 4, "screen": "left"}}""");

        new RememberedFile(folder)
                .change(before ->
                        before.withAppearance(before.appearance().withWindow(new WindowBounds(5, 6, 7, 8, false))));

        assertThat(tree().at("/metronome/volume").intValue()).isEqualTo(3);
        assertThat(tree().at("/version").textValue()).isEqualTo("0.7");
        assertThat(tree().at("/window/screen").textValue()).isEqualTo("left");
        assertThat(tree().at("/window/x").intValue()).isEqualTo(5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "null",
                "\0\0\0\0",
                "{\"format\": \"mantice-remembered\", \"version\": \"0.1\", \"rec",
                "{\"format\": \"mantice-plan\", \"version\": \"0.1\"}",
                "{\"format\": \"mantice-remembered\", \"version\": 1}",
                "{\"format\": \"mantice-remembered\", \"version\": \"0.1\"} {}",
                "{\"format\": \"mantice-remembered\", \"format\": \"mantice-remembered\", \"version\": \"0.1\"}",
                "deep"
            })
    void brokenFileIsSetAsideAndSaid(String content) throws IOException {
        String text = content.equals("deep") ? "{\"a\":" + "[".repeat(100_000) : content;
        Files.writeString(folder.remembered(), text);

        RememberedFile file = new RememberedFile(folder);
        file.change(before -> before.withAccordion("x"));

        assertThat(temp.resolve("state/remembered.json.broken")).hasContent(text);
        assertThat(notices).extracting(Notice::key).containsExactly("work.remembered-broken");
        assertThat(new RememberedFile(folder).current().picked().accordion()).contains("x");
    }

    @Test
    void hugeFileIsSetAside() throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(folder.remembered().toFile(), "rw")) {
            file.setLength(SmallJson.MOST_BYTES + 1L);
        }

        assertThat(new RememberedFile(folder).current()).isEqualTo(Remembered.NOTHING);
        assertThat(notices).extracting(Notice::key).containsExactly("work.remembered-broken");
    }

    @Test
    void valuesOfWrongKindCountAsNotSaid() throws IOException {
        Files.writeString(folder.remembered(), """
                {"format": "mantice-remembered", "version": "0.1", "recent": [3, {"file": "a\\u0000b"}, {"file": 1},
                 {"file": "/tunes/a.musicxml", "missing": "yes"}, {"file": "/tunes/a.musicxml"}],
                 "folder": [], "accordion": {}, "player": 7, "profiles": "x", "language": "xx", "dark": "very",
                 "zoomPercent": 1e99, "window": {"x": 0, "y": 0, "width": -5, "height": 10}, "strips": ["bellows", 5]}""");

        Remembered remembered = new RememberedFile(folder).current();

        assertThat(files(remembered)).containsExactly(Path.of("/tunes/a.musicxml"));
        assertThat(remembered.folder()).isEmpty();
        assertThat(remembered.picked()).isEqualTo(Remembered.NOTHING.picked());
        assertThat(remembered.appearance()).isEqualTo(Appearance.USUAL.withStrips(EnumSet.of(Strip.BELLOWS)));
        assertThat(notices).isEmpty();
    }

    @Test
    void fileOfANewerVersionIsLeftAlone() throws IOException {
        String newer = "{\"format\": \"mantice-remembered\", \"version\": \"1.0\", \"recent\": \"elsewhere\"}";
        Files.writeString(folder.remembered(), newer);

        RememberedFile file = new RememberedFile(folder);
        file.change(before -> before.withAccordion("x"));

        assertThat(folder.remembered()).hasContent(newer);
        assertThat(file.current().picked().accordion()).contains("x");
        assertThat(notices).extracting(Notice::key).containsExactly("work.remembered-newer");
    }

    @Test
    void twoWindowsDoNotForgetWhatTheOtherHasLearnt() throws InterruptedException {
        RememberedFile one = new RememberedFile(folder);
        RememberedFile two = new RememberedFile(folder);
        Thread other = new Thread(() -> {
            for (int i = 0; i < 20; i++) {
                Path file = temp.resolve("profiles/" + i + ".player.json");
                two.change(before -> before.withProfile(file));
            }
        });

        other.start();
        for (int i = 0; i < 10; i++) {
            Path file = temp.resolve(i + ".musicxml");
            one.change(before -> before.withRecent(file));
        }
        other.join();

        Remembered both = new RememberedFile(folder).current();
        assertThat(both.recent()).hasSize(10);
        assertThat(both.profiles()).hasSize(20);
        assertThat(notices).isEmpty();
    }

    @Test
    void whatCannotBeWrittenLastsAsLongAsTheProgram() throws IOException {
        Path inTheWay = Files.writeString(temp.resolve("file"), "not a folder");
        RememberedFile file = new RememberedFile(new AppFolder(inTheWay, inTheWay, notices::add));

        file.change(before -> before.withAccordion("x"));
        file.change(before -> before.withPlayer("y"));

        assertThat(file.current().picked()).isEqualTo(new Remembered.Picked(Optional.of("x"), Optional.of("y")));
        assertThat(notices).extracting(Notice::key).containsExactly("work.folder-not-written");
    }
}
