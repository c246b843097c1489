package org.mantice.app.work;

import java.nio.file.Path;
import java.util.Optional;
import org.mantice.fault.ManticeException;

/**
 * A profile on the shelf.
 *
 * @param <P> accordion or player
 * @param key by which it is found again: the id of a preset or example, the absolute path of a file
 * @param name for people; of a file that cannot be read, the file's name
 * @param file of the player's own profiles
 * @param profile what it holds; empty if it cannot be read
 * @param problem why it cannot be read
 */
public record Shelved<P>(
        String key,
        String name,
        Origin origin,
        Optional<Path> file,
        Optional<P> profile,
        Optional<ManticeException> problem) {
    /** Where a profile comes from. */
    public enum Origin {
        /** Part of the engine. */
        PRESET,
        /** An example file that comes with the app. */
        EXAMPLE,
        /** A file of the player's own. */
        OWN
    }

    /**
     * The profile.
     *
     * @throws ManticeException if its file cannot be read, with the place
     */
    public P load() {
        return profile.orElseThrow(() -> problem.orElseThrow());
    }

    static <P> Shelved<P> preset(String id, String name, P profile) {
        return new Shelved<>(id, name, Origin.PRESET, Optional.empty(), Optional.of(profile), Optional.empty());
    }

    static <P> Shelved<P> example(String id, String name, P profile) {
        return new Shelved<>(id, name, Origin.EXAMPLE, Optional.empty(), Optional.of(profile), Optional.empty());
    }

    static <P> Shelved<P> own(Path file, String name, P profile) {
        return new Shelved<>(
                file.toString(), name, Origin.OWN, Optional.of(file), Optional.of(profile), Optional.empty());
    }

    static <P> Shelved<P> broken(Path file, ManticeException problem) {
        return new Shelved<>(
                file.toString(),
                String.valueOf(file.getFileName()),
                Origin.OWN,
                Optional.of(file),
                Optional.empty(),
                Optional.of(problem));
    }
}
