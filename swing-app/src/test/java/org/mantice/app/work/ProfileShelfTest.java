package org.mantice.app.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.work.Shelved.Origin;
import org.mantice.fault.ManticeException;
import org.mantice.file.AccordionFile;
import org.mantice.file.FileWriteException;
import org.mantice.file.PlayerFile;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;

class ProfileShelfTest {
    @TempDir
    Path temp;

    private final List<Notice> notices = new ArrayList<>();

    private ProfileShelf shelf() {
        return new ProfileShelf(new AppFolder(temp.resolve("settings"), temp.resolve("state"), notices::add));
    }

    private static Player player(String id, String name) {
        Player some = Works.player();
        return new Player(
                id,
                name,
                some.handSpanTenths(),
                some.bassMethod(),
                some.jumps(),
                some.mayTurnInHeldNote(),
                some.taste());
    }

    @Test
    void shelfHoldsPresetsThenShippedExamplesThenOwnFiles() {
        Path own = shelf().saveNew(player("ina", "Ina"));
        Path accordion = temp.resolve("box.accordion.json");
        AccordionFile.of(AccordionPresets.get("student-26-key-48-bass")).write(accordion);

        List<Shelved<Player>> players = shelf().players(List.of(accordion));
        List<Shelved<Accordion>> accordions = shelf().accordions(List.of(accordion));

        assertThat(players)
                .extracting(Shelved::key)
                .containsExactly(
                        "small-hand",
                        "medium-hand",
                        "large-hand",
                        "oda-wennick",
                        "pim-haldersen",
                        "runa-tolbek",
                        own.toString());
        assertThat(accordions)
                .extracting(Shelved::origin)
                .startsWith(Origin.PRESET)
                .endsWith(Origin.EXAMPLE, Origin.EXAMPLE, Origin.EXAMPLE, Origin.OWN);
        assertThat(accordions).extracting(Shelved::key).doesNotHaveDuplicates();
        assertThat(notices).isEmpty();
    }

    @Test
    void everyEntryIsFoundAgainByItsKeyAndLoads() {
        shelf().saveNew(player("ina", "Ina"));

        for (Shelved<Player> entry : shelf().players(List.of()))
            assertThat(shelf().player(entry.key()).orElseThrow().load()).isEqualTo(entry.load());
        for (Shelved<Accordion> entry : shelf().accordions(List.of()))
            assertThat(shelf().accordion(entry.key()).orElseThrow().load()).isEqualTo(entry.load());
    }

    @Test
    void keyOfNothingIsNotFound() {
        for (String key : List.of("", "no-such", "a\0b", temp.toString()))
            assertThat(shelf().player(key)).as("\"%s\"", key).isEmpty();
    }

    @Test
    void brokenFileIsOnTheShelfWithItsProblemAndTheRestGoesOn() throws IOException {
        Path good = shelf().saveNew(player("ina", "Ina"));
        Path broken = Files.writeString(good.resolveSibling("a.player.json"), "{\"format\": \0");

        List<Shelved<Player>> players = shelf().players(List.of());

        assertThat(players).extracting(Shelved::key).endsWith(broken.toString(), good.toString());
        Shelved<Player> entry = players.get(players.size() - 2);
        assertThat(entry.name()).isEqualTo("a.player.json");
        assertThatThrownBy(entry::load)
                .isInstanceOf(ManticeException.class)
                .hasMessageContaining("a.player.json, line 1");
    }

    @Test
    void rememberedFileWithAnyNameCountsOnceAsWhatItIsAndNotWhenItIsGone() throws IOException {
        Path odd = temp.resolve("ina.txt");
        PlayerFile.of(player("ina", "Ina")).write(odd);
        Path gone = temp.resolve("gone.player.json");
        Path other = Files.writeString(temp.resolve("other.json"), "{}");

        List<Shelved<Player>> players = shelf().players(List.of(odd, temp.resolve("x/../ina.txt"), gone, other));

        assertThat(players)
                .filteredOn(entry -> entry.origin() == Origin.OWN)
                .singleElement()
                .satisfies(entry -> {
                    assertThat(entry.file()).contains(odd);
                    assertThat(entry.name()).isEqualTo("Ina");
                });
        assertThat(shelf().accordions(List.of(odd))).noneMatch(entry -> entry.origin() == Origin.OWN);
    }

    @Test
    void weightsAreSavedIntoTheFileAndOtherFieldsKept() throws IOException {
        Path file = shelf().saveNew(player("ina", "Ina"));
        Files.writeString(file, Files.readString(file).replaceFirst("\\{", "{ \"teacher\": \"Pim\","));

        shelf().save(
                        file,
                        new Player(
                                "ina",
                                "Ina",
                                101,
                                Works.player().bassMethod(),
                                Works.player().jumps(),
                                true,
                                Works.player().taste().with("bellows.turns", 300)));

        Player back = shelf().player(file.toString()).orElseThrow().load();
        assertThat(back.taste().perMille("bellows.turns")).isEqualTo(300);
        assertThat(back.handSpanTenths()).isEqualTo(101);
        assertThat(new ObjectMapper().readTree(file.toFile()).path("teacher").textValue())
                .isEqualTo("Pim");
    }

    @Test
    void fileThatBrokeMeanwhileIsNotWrittenOver() throws IOException {
        Path file = shelf().saveNew(player("ina", "Ina"));
        Files.writeString(file, "half");

        assertThatThrownBy(() -> shelf().save(file, player("ina", "Ina"))).isInstanceOf(ManticeException.class);

        assertThat(file).hasContent("half");
    }

    @Test
    void newPlayerNeedsAnIdThatNobodyHas() {
        shelf().saveNew(player("ina", "Ina"));

        for (String taken : List.of("ina", "medium-hand", "oda-wennick"))
            assertThatThrownBy(() -> shelf().saveNew(player(taken, "X")))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("id is " + taken);
    }

    @Test
    void freeIdComesFromTheName() {
        shelf().saveNew(player("ase-lund", "Åse Lund"));

        assertThat(shelf().freeId("Åse Lund")).isEqualTo("ase-lund-2");
        assertThat(shelf().freeId("  Medium  Hand! ")).isEqualTo("medium-hand-2");
        assertThat(shelf().freeId("李")).isEqualTo("player");
        assertThat(shelf().freeId("x".repeat(300))).hasSizeLessThanOrEqualTo(64);
        assertThat(PlayerPresets.find(shelf().freeId("Small hand"))).isEmpty();
    }

    @Test
    void everyFreeIdIsAllowed() {
        for (String name : List.of("", "-", "a--b", "ß", "İ", "A-".repeat(100), "x".repeat(59) + " y"))
            assertThat(player(shelf().freeId(name), "X").id())
                    .as("\"%s\"", name)
                    .isNotEmpty();
    }

    @Test
    void whereNothingCanBeWrittenSavingSaysWhy() throws IOException {
        Path inTheWay = Files.writeString(temp.resolve("file"), "not a folder");
        ProfileShelf shelf = new ProfileShelf(new AppFolder(inTheWay, inTheWay, notices::add));

        assertThat(shelf.players(List.of())).hasSize(6);
        assertThatThrownBy(() -> shelf.saveNew(player("ina", "Ina"))).isInstanceOf(FileWriteException.class);
        assertThat(notices).isEmpty();
    }

    @Test
    void shippedFilesAreReadOutOfAJarToo() throws Exception {
        Path jar = temp.resolve("the jär.jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
            for (String name : List.of(
                    "org/mantice/app/work/ShippedFiles.class",
                    TuneContent.EXAMPLE,
                    "examples/players/pim-haldersen.player.json",
                    "examples/players/oda-wennick.player.json")) {
                out.putNextEntry(new JarEntry(name));
                out.write(ProfileShelf.class.getResourceAsStream("/" + name).readAllBytes());
            }
        }

        List<?> read;
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
            Method readAll = loader.loadClass(ShippedFiles.class.getName())
                    .getDeclaredMethod("readAll", String.class, Function.class);
            readAll.setAccessible(true);
            Function<Path, String> id = file -> PlayerFile.read(file).player().id();
            read = (List<?>) readAll.invoke(null, "examples/players", id);
        }

        assertThat(read).isEqualTo(List.of("oda-wennick", "pim-haldersen"));
    }
}
