package org.mantice.app.model;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Does slow work somewhere else, one piece after the other in the order given (a planning is not for several threads at
 * once), and tells of it on the thread that asked. Work that was cancelled tells of nothing any more; if it has not
 * begun, it never does.
 */
public interface Background {
    /** Slow work. */
    interface Work<I, R> {
        /**
         * @param interim takes what is known before the end
         * @param cancelled whether nobody waits any more
         */
        R run(Consumer<I> interim, BooleanSupplier cancelled) throws Exception;
    }

    /** Work under way. */
    interface Running {
        void cancel();
    }

    /** @param failed takes whatever {@code work} threw */
    <I, R> Running start(Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed);

    /** Calls on the thread that asked, after a while, unless it is cancelled before. */
    Running later(Duration wait, Runnable call);

    /**
     * Gives up the work under way, which does not come back: nothing is told of it any more, its thread is left to
     * itself (Java cannot stop it), and the work behind it goes on in another.
     */
    void abandon();
}
