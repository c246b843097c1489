package org.mantice.app.work;

import java.nio.file.Path;

/** What became of a copy of unsaved work that was to be restored. */
public sealed interface Restored {
    /** All of it is there. */
    record Work(UnsavedWork work) implements Restored {}

    /**
     * The tune was too large to be copied, and its file is not there.
     *
     * @param wanted where it was
     */
    record TuneMissing(Path wanted) implements Restored {}

    /**
     * The tune was too large to be copied, and its file is another one now.
     *
     * @param file where it is
     */
    record TuneChanged(Path file) implements Restored {}
}
