package org.mantice.app.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The copy of this instance's unsaved work, and the way to those that other instances left behind. Each running instance
 * has a file of its own and holds a lock, so that a copy whose instance lives is offered to nobody. A copy is replaced
 * whole or not at all. Calls may come from any thread.
 */
public final class RecoveryCopy implements AutoCloseable {
    private final AppFolder appFolder;
    private final RecoveryFolder folder;
    private final InstantSource clock;
    private final String id = UUID.randomUUID().toString();
    private Optional<InstanceLock> lock = Optional.empty();
    private boolean closed;

    public RecoveryCopy(AppFolder folder, InstantSource clock) {
        this.appFolder = folder;
        this.folder = new RecoveryFolder(folder);
        this.clock = clock;
    }

    /** Writes the copy, in place of the one before; where that cannot be done the player is told once. */
    public synchronized void write(UnsavedWork work) {
        put(work);
    }

    private boolean put(UnsavedWork work) {
        if (closed) return false;
        if (lock.isEmpty()) lock = folder.lock(id, true);
        return appFolder.write(folder.copy(id), RecoveryArchive.bytes(work, clock.instant()));
    }

    /** Nothing is unsaved: the copy is not needed. */
    public synchronized void remove() {
        if (lock.isPresent()) folder.removeCopy(id);
    }

    /** Removes the copy, and writes none any more: the program ends as the player wants it to. */
    @Override
    public synchronized void close() {
        closed = true;
        lock.ifPresent(held -> folder.removeAll(id, held));
        lock = Optional.empty();
    }

    /**
     * The copies whose instances have ended, newest first. What cannot be used is set aside and said, what a newer
     * version wrote is left and said; neither keeps the rest from being found.
     *
     * @return each to be restored, discarded or closed
     */
    public List<AbandonedCopy> findAbandoned() {
        List<AbandonedCopy> found = new ArrayList<>();
        for (String other : folder.ids()) {
            Optional<InstanceLock> claim = folder.lock(other, false);
            if (claim.isEmpty()) continue;
            Optional<AbandonedCopy> copy = look(other, claim.get());
            copy.ifPresentOrElse(found::add, claim.get()::close);
        }
        found.sort(Comparator.comparing(AbandonedCopy::writtenAt).reversed());
        return List.copyOf(found);
    }

    private Optional<AbandonedCopy> look(String other, InstanceLock claim) {
        Path file = folder.copy(other);
        if (!Files.exists(file)) {
            if (folder.isOld(other, clock.instant())) folder.removeAll(other, claim);
            return Optional.empty();
        }
        try {
            return Optional.of(new AbandonedCopy(folder, other, claim, RecoveryArchive.head(file)));
        } catch (SmallJson.NewerVersion e) {
            appFolder.tell(Notice.of("work.recovery-newer", file));
        } catch (IOException e) {
            appFolder.tell(Notice.of("work.recovery-broken", AppFolder.setAside(file)));
        }
        return Optional.empty();
    }

    /**
     * Brings unsaved work back. From then on it is this instance's own: its copy takes the place of the abandoned one.
     *
     * @return the work; empty if the copy turns out to be damaged, which is then set aside and said
     */
    public Optional<Restored> restore(AbandonedCopy abandoned) {
        return restore(abandoned, Optional.empty());
    }

    /** The same with a tune that the player had to look for. */
    public Optional<Restored> restore(AbandonedCopy abandoned, Path tune) {
        return restore(abandoned, Optional.of(tune));
    }

    private synchronized Optional<Restored> restore(AbandonedCopy abandoned, Optional<Path> tune) {
        try {
            Restored restored = abandoned.read(tune);
            if (restored instanceof Restored.Work work && put(work.work())) abandoned.discard();
            return Optional.of(restored);
        } catch (IOException e) {
            appFolder.tell(Notice.of("work.recovery-broken", AppFolder.setAside(abandoned.file())));
            abandoned.close();
            return Optional.empty();
        }
    }
}
