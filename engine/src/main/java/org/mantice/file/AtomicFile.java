package org.mantice.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file whole or not at all: into a temporary file beside it, flushed to the disk, then renamed over it. A
 * reader sees the old file or the new one, never half of one. The previous file stays beside it as a backup.
 */
public final class AtomicFile {
    private AtomicFile() {}

    /** Where the previous file is kept: its name with {@code .bak} behind. */
    public static Path backupOf(Path file) {
        return file.resolveSibling(file.getFileName() + ".bak");
    }

    /**
     * Puts the content in place. A symbolic link is followed. The folder must exist.
     *
     * @throws FileWriteException if it cannot be written; the file is then as before and no temporary file is left
     */
    public static void write(Path file, byte[] content) {
        try {
            Path target = Files.isSymbolicLink(file) ? file.toRealPath() : file.toAbsolutePath();
            if (Files.isDirectory(target)) throw new FileSystemException(file.toString(), null, "it is a folder");
            Path fresh = temporaryFor(target);
            try {
                writeFlushed(fresh, content);
                if (Files.exists(target)) backUp(target);
                replace(fresh, target);
            } finally {
                Files.deleteIfExists(fresh);
            }
            flushFolderOf(target);
        } catch (IOException e) {
            throw new FileWriteException(file, e);
        }
    }

    private static Path temporaryFor(Path target) {
        return target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".tmp");
    }

    private static void writeFlushed(Path fresh, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) channel.write(buffer);
            channel.force(true);
        }
    }

    /** The backup too is whole at any time: it is copied aside first. */
    private static void backUp(Path target) throws IOException {
        Path copy = temporaryFor(target);
        try {
            Files.copy(target, copy, StandardCopyOption.COPY_ATTRIBUTES);
            replace(copy, backupOf(target));
        } finally {
            Files.deleteIfExists(copy);
        }
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** So that the rename itself survives a loss of power; not every system lets a folder be opened. */
    private static void flushFolderOf(Path file) {
        Path folder = file.getParent();
        if (folder == null) return;
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            return;
        }
    }
}
