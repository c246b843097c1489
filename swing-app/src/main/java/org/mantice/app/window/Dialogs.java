package org.mantice.app.window;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.mantice.app.model.BookLine;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneEntry;

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

    /** Where and how a tune is to be written: with repeats as written, or with every time through written out. */
    record Score(Path file, boolean writtenOut) {}

    Optional<Path> open(Kind kind, Optional<Path> folder);

    Optional<Path> save(Path suggested);

    Optional<Score> saveScore(Path suggested);

    /**
     * Which tune of a book.
     *
     * @param last the one to begin with, as {@link TuneEntry#handle()}
     */
    Optional<TuneEntry> tuneOf(List<BookLine> book, Optional<String> last);

    /** Which part has the melody; shows which one was taken and how. */
    Optional<PartInfo> melodyOf(ReadTune tune);

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
