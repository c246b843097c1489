package org.mantice.app.work;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * A lock on a file that is held for as long as a program lives, so that others can tell whether it does: the system lets
 * go of it however the program ends. A file locked in this process is never opened here again, because on some systems
 * the closing of any channel on it would let go of the lock.
 */
final class InstanceLock implements AutoCloseable {
    private static final Set<Path> HELD_HERE = new HashSet<>();

    private final Path file;
    private final Optional<FileChannel> channel;
    private boolean open = true;

    private InstanceLock(Path file, Optional<FileChannel> channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * The lock, unless somebody holds it. Where the system has no locks, or the file cannot be opened, it counts as
     * free: better to offer a copy twice than never.
     */
    static Optional<InstanceLock> take(Path lockFile, boolean make) {
        Path file = lockFile.toAbsolutePath().normalize();
        synchronized (HELD_HERE) {
            if (HELD_HERE.contains(file)) return Optional.empty();
            Optional<FileChannel> channel = Optional.empty();
            try {
                channel = Optional.of(
                        make
                                ? FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)
                                : FileChannel.open(file, StandardOpenOption.WRITE));
                if (channel.get().tryLock() == null) {
                    channel.get().close();
                    return Optional.empty();
                }
            } catch (OverlappingFileLockException e) {
                return Optional.empty();
            } catch (IOException e) {
                channel = closed(channel);
            }
            HELD_HERE.add(file);
            return Optional.of(new InstanceLock(file, channel));
        }
    }

    private static Optional<FileChannel> closed(Optional<FileChannel> channel) {
        try {
            if (channel.isPresent()) channel.get().close();
        } catch (IOException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /** Lets go of the lock; its file stays. */
    @Override
    public void close() {
        synchronized (HELD_HERE) {
            if (!open) return;
            open = false;
            closed(channel);
            HELD_HERE.remove(file);
        }
    }
}
