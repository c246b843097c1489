package org.mantice.app.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.words.Words;

class AppFolderTest {
    private static final Path HOME = Path.of("home", "oda").toAbsolutePath();

    @TempDir
    Path temp;

    private final List<Notice> notices = new ArrayList<>();

    private AppFolder of(String system, Map<String, String> environment) {
        return AppFolder.of(system, environment, HOME, notices::add);
    }

    /** XDG Base Directory Specification 0.8: $HOME/.config and $HOME/.local/state where nothing is set. */
    @Test
    void linuxWithoutSettingsUsesTheFoldersOfTheSpecification() {
        AppFolder folder = of("Linux", Map.of());

        assertThat(folder.profiles()).isEqualTo(HOME.resolve(".config/mantice/profiles"));
        assertThat(folder.recovery()).isEqualTo(HOME.resolve(".local/state/mantice/recovery"));
    }

    @Test
    void linuxFollowsWhatTheEnvironmentSays() {
        Path config = temp.resolve("config").toAbsolutePath();
        Path state = temp.resolve("state").toAbsolutePath();

        AppFolder folder = of("Linux", Map.of("XDG_CONFIG_HOME", config + "", "XDG_STATE_HOME", state + ""));

        assertThat(folder.profiles()).isEqualTo(config.resolve("mantice/profiles"));
        assertThat(folder.remembered()).isEqualTo(state.resolve("mantice/remembered.json"));
    }

    /** XDG Base Directory Specification 0.8: "If an implementation encounters a relative path … it should … ignore it." */
    @Test
    void pathsThatAreEmptyRelativeOrNoPathsDoNotCount() {
        for (String path : List.of("", " ", "config", "\0"))
            assertThat(of("FreeBSD", Map.of("XDG_CONFIG_HOME", path)).profiles())
                    .as("\"%s\"", path)
                    .isEqualTo(HOME.resolve(".config/mantice/profiles"));
    }

    @Test
    void macAndWindowsHaveFoldersOfTheirOwn() {
        Path roaming = temp.resolve("Roaming").toAbsolutePath();

        assertThat(of("Mac OS X", Map.of("XDG_CONFIG_HOME", roaming + "")).profiles())
                .isEqualTo(HOME.resolve("Library/Application Support/Mantice/profiles"));
        assertThat(of("Windows 11", Map.of("APPDATA", roaming + "")).profiles())
                .isEqualTo(roaming.resolve("Mantice/profiles"));
        assertThat(of("Windows 11", Map.of()).profiles()).isEqualTo(HOME.resolve("AppData/Roaming/Mantice/profiles"));
    }

    @Test
    void foldersAreMadeForTheUserAlone() throws IOException {
        AppFolder folder = new AppFolder(temp.resolve("a/b"), temp.resolve("c/d"), notices::add);

        boolean written = folder.write(folder.remembered(), new byte[] {1});

        assertThat(written).isTrue();
        assertThat(notices).isEmpty();
        if (Files.getFileStore(temp).supportsFileAttributeView("posix"))
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(temp.resolve("c/d"))))
                    .isEqualTo("rwx------");
    }

    @Test
    void whereNothingCanBeWrittenThePlayerIsToldOnceInBothLanguages() throws IOException {
        Path inTheWay = Files.writeString(temp.resolve("file"), "not a folder");
        AppFolder folder = new AppFolder(inTheWay.resolve("a"), inTheWay.resolve("b"), notices::add);

        assertThat(folder.write(folder.remembered(), new byte[] {1})).isFalse();
        assertThat(folder.write(folder.remembered(), new byte[] {1})).isFalse();

        assertThat(notices).hasSize(1);
        assertThat(notices.get(0).text(Words.of(Locale.ENGLISH))).contains("cannot be kept", "remembered.json");
        assertThat(notices.get(0).text(Words.of(Locale.GERMAN))).contains("nicht speichern", "remembered.json");
    }
}
