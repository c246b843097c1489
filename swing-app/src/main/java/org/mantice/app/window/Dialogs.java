package org.mantice.app.window;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What the player is asked. Every question can be left without an answer. */
interface Dialogs {
    /** What is to be opened. */
    enum Kind {
        TUNE,
        PLAN
    }

    /** What to do with work that is not saved. */
    enum Unsaved {
        SAVE,
        LOSE,
        CANCEL
    }

    /** What to do with copies of unsaved work. */
    enum Recovery {
        BRING_BACK,
        THROW_AWAY,
        LATER
    }

    /** A copy of unsaved work, for people. */
    record Copy(String title, String tuneFile, Instant writtenAt) {}

    /** An answer about one of the copies. */
    record RecoveryAnswer(Recovery what, int copy) {}

    Optional<Path> open(Kind kind, Optional<Path> folder);

    Optional<Path> save(Path suggested);

    /** @param wanted the tune's file as a plan names it, which is not there */
    Optional<Path> findTune(String wanted, Optional<Path> folder);

    Unsaved unsaved();

    boolean overwrite(Path file);

    /** Whether to plan a tune anew that has changed since its plan was made. */
    boolean planAnew(String tuneFile);

    Optional<String> playerName(String suggested);

    boolean overwritePlayer(String name);

    RecoveryAnswer recover(List<Copy> copies);
}
