package org.mantice.app.work;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A copy of unsaved work whose program has ended. As long as this is open no other instance is offered it; closing it
 * leaves it for the next start.
 */
public final class AbandonedCopy implements AutoCloseable {
    private final RecoveryFolder folder;
    private final String id;
    private final InstanceLock claim;
    private final RecoveryArchive.Head head;

    AbandonedCopy(RecoveryFolder folder, String id, InstanceLock claim, RecoveryArchive.Head head) {
        this.folder = folder;
        this.id = id;
        this.claim = claim;
        this.head = head;
    }

    /** The tune's title; its file's name where it has none. */
    public String title() {
        return head.title().isBlank() ? head.tuneFile() : head.title();
    }

    /** The tune's file, as it was given. */
    public String tuneFile() {
        return head.tuneFile();
    }

    public Instant writtenAt() {
        return head.writtenAt();
    }

    /** The plan file last opened or saved before. */
    public Optional<Path> savedTo() {
        return head.savedTo();
    }

    Restored read(Optional<Path> tune) throws IOException {
        return RecoveryArchive.restore(folder.copy(id), tune);
    }

    Path file() {
        return folder.copy(id);
    }

    /** Throws the copy away. */
    public void discard() {
        folder.removeAll(id, claim);
    }

    @Override
    public void close() {
        claim.close();
    }
}
