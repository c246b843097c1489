package org.mantice.app.work;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The folder with copies of unsaved work: {@code <id>.recovery.zip} and {@code <id>.lock}, one pair an instance. */
final class RecoveryFolder {
    static final String SUFFIX = ".recovery.zip";
    private static final Pattern OURS = Pattern.compile("\\.?([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})\\..+");
    /** A lock without a copy may belong to an instance that is about to write its first. */
    private static final Duration ORPHANED = Duration.ofDays(1);

    private final AppFolder folder;

    RecoveryFolder(AppFolder folder) {
        this.folder = folder;
    }

    Path copy(String id) {
        return folder.recovery().resolve(id + SUFFIX);
    }

    Optional<InstanceLock> lock(String id, boolean make) {
        if (make) AppFolder.makeFolder(folder.recovery());
        return InstanceLock.take(folder.recovery().resolve(id + ".lock"), make);
    }

    /** The ids of all instances that left something, in order of their ids. */
    List<String> ids() {
        Map<String, String> ids = new TreeMap<>();
        for (Path file : files()) {
            Matcher name = OURS.matcher(file.getFileName().toString());
            if (name.matches()) ids.put(name.group(1), name.group(1));
        }
        return List.copyOf(ids.keySet());
    }

    private List<Path> files() {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(folder.recovery())) return files;
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder.recovery())) {
            all.forEach(files::add);
        } catch (IOException | DirectoryIteratorException e) {
            folder.tell(Notice.of("work.recovery-unreadable", folder.recovery()));
        }
        return files;
    }

    /** Whether nothing of an instance was touched for a day. */
    boolean isOld(String id, Instant now) {
        for (Path file : files())
            if (belongsTo(file, id) && !lastTouched(file).isBefore(now.minus(ORPHANED))) return false;
        return true;
    }

    private static Instant lastTouched(Path file) {
        try {
            return Files.getLastModifiedTime(file).toInstant();
        } catch (IOException e) {
            return Instant.MAX;
        }
    }

    /** Removes the copy of an instance with its backup and what an interrupted write left. */
    void removeCopy(String id) {
        for (Path file : files()) {
            String name = file.getFileName().toString();
            boolean aside = name.endsWith(".lock") || name.endsWith(".broken");
            if (belongsTo(file, id) && !aside) remove(file);
        }
    }

    /** Removes the copy, lets go of its lock and removes that: some systems remove no file that is open. */
    void removeAll(String id, InstanceLock held) {
        removeCopy(id);
        held.close();
        remove(folder.recovery().resolve(id + ".lock"));
    }

    private static boolean belongsTo(Path file, String id) {
        Matcher name = OURS.matcher(file.getFileName().toString());
        return name.matches() && name.group(1).equals(id);
    }

    private void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            folder.cannotWrite(e);
        }
    }
}
