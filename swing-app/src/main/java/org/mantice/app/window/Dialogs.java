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

    /**
     * Where and how a tune is to be written.
     *
     * @param writtenOut with every time through written out, else with repeats as written
     * @param bassStaff with the plan's left hand as bass staff; only where it is written out
     */
    record Score(Path file, boolean writtenOut, boolean bassStaff) {
        /** The same in another place. */
        Score at(Path other) {
            return new Score(other, writtenOut, bassStaff);
        }
    }

    Optional<Path> open(Kind kind, Optional<Path> folder);

    Optional<Path> save(Path suggested);

    /** @param planned whether there is a plan whose left hand can be written */
    Optional<Score> saveScore(Path suggested, boolean planned);

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
