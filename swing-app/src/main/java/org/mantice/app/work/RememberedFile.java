package org.mantice.app.work;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.UnaryOperator;

/**
 * The file with what the app remembers. Several windows may be open at once: a change is made to what the file holds at
 * that moment, so that none forgets what another has learnt. A file that cannot be read is set aside and the player
 * told; one that a newer version wrote is left alone.
 */
public final class RememberedFile {
    private static final String FORMAT = "mantice-remembered";
    /** Two windows of one process share a lock of the system, so they also need one of their own. */
    private static final Object IN_THIS_PROCESS = new Object();

    /** Others hold the lock for the moment of a write only. */
    private static final int LOCK_TRIES = 100;

    private static final long LOCK_PAUSE_NANOS = 10_000_000;

    private final AppFolder folder;
    private final Path file;
    private Remembered current;
    private boolean onDisk = true;
    private boolean newer;

    /** Reads what there is; never fails. */
    public RememberedFile(AppFolder folder) {
        this.folder = folder;
        this.file = folder.remembered();
        this.current = tree().map(RememberedJson::of).orElse(Remembered.NOTHING);
    }

    /** As it was last read or changed here. */
    public synchronized Remembered current() {
        return current;
    }

    /**
     * Changes what is remembered and writes it. Where it cannot be written the change lasts as long as this object.
     * Waits for at most a second while another window writes.
     *
     * @return what is remembered now
     */
    public synchronized Remembered change(UnaryOperator<Remembered> change) {
        synchronized (IN_THIS_PROCESS) {
            AppFolder.makeFolder(Objects.requireNonNull(file.getParent()));
            Optional<FileChannel> held = held(file.resolveSibling(file.getFileName() + ".lock"));
            try {
                return changed(change);
            } finally {
                held.ifPresent(RememberedFile::close);
            }
        }
    }

    /** The lock on a file, once whoever has it lets go; nothing where locks cannot be had or do not come. */
    private static Optional<FileChannel> held(Path lockFile) {
        try {
            FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            for (int i = 0; i < LOCK_TRIES && channel.tryLock() == null; i++) LockSupport.parkNanos(LOCK_PAUSE_NANOS);
            return Optional.of(channel);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Lets go of the lock. */
    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException("a lock cannot be let go", e);
        }
    }

    private Remembered changed(UnaryOperator<Remembered> change) {
        Optional<ObjectNode> there = tree();
        Remembered before = onDisk ? there.map(RememberedJson::of).orElse(current) : current;
        current = change.apply(before);
        if (newer) return current;
        ObjectNode tree = there.orElseGet(() -> SmallJson.fresh(FORMAT));
        RememberedJson.put(current, tree);
        onDisk = folder.write(file, SmallJson.bytes(tree));
        return current;
    }

    private Optional<ObjectNode> tree() {
        if (newer) return Optional.empty();
        try {
            return Optional.of(SmallJson.read(file, FORMAT));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (SmallJson.NewerVersion e) {
            newer = true;
            folder.tell(Notice.of("work.remembered-newer", file));
        } catch (IOException e) {
            if (Files.isRegularFile(file)) folder.tell(Notice.of("work.remembered-broken", AppFolder.setAside(file)));
            else folder.cannotWrite(e);
        }
        return Optional.empty();
    }
}
