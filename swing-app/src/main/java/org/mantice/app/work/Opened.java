package org.mantice.app.work;

import java.nio.file.Path;
import java.util.List;
import org.mantice.app.model.BookLine;
import org.mantice.app.model.OpenTune;
import org.mantice.file.PlanDocument;

/** What became of a file that was opened. */
public sealed interface Opened {
    /** A tune, to be planned. */
    record Tune(OpenTune tune, TuneContent content) implements Opened {}

    /**
     * A book of tunes, of which the player chooses one.
     *
     * @param lines its tunes, two or more
     */
    record Book(TuneContent content, List<BookLine> lines) implements Opened {
        public Book {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A plan, and its tune as it was when it was planned.
     *
     * @param file of the plan
     */
    record PlanWithTune(OpenTune tune, TuneContent content, PlanDocument plan, Path file) implements Opened {}

    /**
     * A plan whose tune is not where the plan says, nor beside it: the player can say where it is now.
     *
     * @param file of the plan
     * @param wanted the tune's file as the plan names it
     */
    record TuneMissing(PlanDocument plan, Path file, String wanted) implements Opened {}

    /**
     * A plan whose tune is another one than was planned: its decisions do not fit, but the tune can be planned anew.
     *
     * @param file of the plan
     */
    record TuneChanged(PlanDocument plan, Path file, OpenTune tune, TuneContent content) implements Opened {}
}
