package org.mantice.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.mantice.fault.Cause;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;

/** A file could not be written; what was there before is still there. Code {@code NOT_WRITTEN}, argument the reason. */
public final class FileWriteException extends ManticeException {
    FileWriteException(Path file, IOException cause) {
        super(
                "NOT_WRITTEN",
                List.of(reason(cause)),
                FilePlace.of(file.toString()),
                "cannot be written (" + reason(cause) + "); what was there before is unchanged",
                cause);
    }

    private static String reason(IOException cause) {
        if (cause instanceof NoSuchFileException) return "no such folder";
        if (cause instanceof AccessDeniedException) return "not permitted";
        if (cause instanceof FileSystemException system && system.getReason() != null) return system.getReason();
        return Cause.words(cause);
    }
}
