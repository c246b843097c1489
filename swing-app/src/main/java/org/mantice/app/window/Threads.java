package org.mantice.app.window;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Where things happen.
 *
 * @param files reads and writes files, one thing after the other
 * @param ui the thread of the window
 */
record Threads(Executor files, Executor ui) {
    /** Does slow work and tells of it in the window's thread. What it throws, other than expected, is nobody's to hide. */
    <T> void read(Supplier<T> work, Consumer<T> done) {
        files.execute(() -> {
            T result = work.get();
            ui.execute(() -> done.accept(result));
        });
    }
}
