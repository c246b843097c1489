package org.mantice.app.model;

import java.time.Duration;
import java.util.function.Consumer;

/** Does the work at once, on the thread that asks. */
public final class DirectBackground implements Background {
    @Override
    public <I, R> Running start(Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed) {
        R result;
        try {
            result = work.run(interim, () -> false);
        } catch (Exception e) {
            failed.accept(e);
            return () -> {};
        }
        done.accept(result);
        return () -> {};
    }

    /** Never: nothing takes time here. */
    @Override
    public Running later(Duration wait, Runnable call) {
        return () -> {};
    }

    @Override
    public void abandon() {}
}
