package org.mantice.app.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.mantice.file.AtomicFile;
import org.mantice.file.FileWriteException;

/**
 * Where the app keeps its own things. Profiles lie with the settings; what changes by itself (recent files, the window,
 * copies of unsaved work) lies with the state. Folders are made when something is first written, for the user alone.
 * Where nothing can be written the app goes on without, and says so once.
 */
public final class AppFolder {
    private final Path settings;
    private final Path state;
    private final Consumer<Notice> told;
    private final AtomicBoolean said = new AtomicBoolean();

    /** @param told takes what the player should be told, on whatever thread it comes up */
    public AppFolder(Path settings, Path state, Consumer<Notice> told) {
        this.settings = settings;
        this.state = state;
        this.told = told;
    }

    /** The usual place of this computer's system. */
    public static AppFolder ofThisComputer(Consumer<Notice> told) {
        Map<String, String> environment = System.getenv();
        Path home = absolute(System.getProperty("user.home", ""))
                .or(() -> absolute(System.getProperty("java.io.tmpdir", "")))
                .orElseGet(() -> Path.of("").toAbsolutePath());
        return of(System.getProperty("os.name", ""), environment, home, told);
    }

    /**
     * The place by the customs of a system: Windows, {@code %APPDATA%\Mantice}; macOS, {@code Library/Application
     * Support/Mantice}; else the XDG Base Directory Specification 0.8, {@code $XDG_CONFIG_HOME/mantice} and {@code
     * $XDG_STATE_HOME/mantice}, by which a path that is not absolute does not count.
     *
     * @param system as the property {@code os.name} gives it
     * @param home the user's home, where the environment does not say
     */
    static AppFolder of(String system, Map<String, String> environment, Path home, Consumer<Notice> told) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            Path folder = absolute(environment.getOrDefault("APPDATA", ""))
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Mantice");
            return new AppFolder(folder, folder.resolve("State"), told);
        }
        if (name.startsWith("mac")) {
            Path folder = home.resolve("Library").resolve("Application Support").resolve("Mantice");
            return new AppFolder(folder, folder.resolve("State"), told);
        }
        Path base = absolute(environment.getOrDefault("HOME", "")).orElse(home);
        return new AppFolder(
                absolute(environment.getOrDefault("XDG_CONFIG_HOME", ""))
                        .orElse(base.resolve(".config"))
                        .resolve("mantice"),
                absolute(environment.getOrDefault("XDG_STATE_HOME", ""))
                        .orElse(base.resolve(".local").resolve("state"))
                        .resolve("mantice"),
                told);
    }

    private static Optional<Path> absolute(String named) {
        try {
            return Optional.of(Path.of(named)).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** The player's own profiles. */
    public Path profiles() {
        return settings.resolve("profiles");
    }

    Path remembered() {
        return state.resolve("remembered.json");
    }

    Path recovery() {
        return state.resolve("recovery");
    }

    void tell(Notice notice) {
        told.accept(notice);
    }

    /**
     * Writes one of the app's own files, whole or not at all, and makes its folder.
     *
     * @return whether it is written; the first time that it is not, the player is told
     */
    boolean write(Path file, byte[] content) {
        makeFolder(Objects.requireNonNull(file.getParent()));
        try {
            AtomicFile.write(file, content);
            return true;
        } catch (FileWriteException e) {
            cannotWrite(e);
            return false;
        }
    }

    /** Tells the player, the first time, that nothing can be kept here. */
    void cannotWrite(Exception cause) {
        if (said.compareAndSet(false, true)) tell(Notice.causedBy(cause, "work.folder-not-written"));
    }

    /** Makes a folder for the user alone; where that fails, whoever writes into it finds out. */
    static void makeFolder(Path folder) {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] own = posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
                }
                : new FileAttribute<?>[0];
        try {
            Files.createDirectories(folder, own);
        } catch (IOException e) {
            return;
        }
    }

    /**
     * Moves a file out of the way that cannot be used, to its name with {@code .broken} behind.
     *
     * @return where it is now; its own place if it cannot be moved
     */
    static Path setAside(Path file) {
        Path aside = file.resolveSibling(file.getFileName() + ".broken");
        try {
            return Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            return file;
        }
    }
}
