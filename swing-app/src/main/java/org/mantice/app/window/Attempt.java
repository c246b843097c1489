package org.mantice.app.window;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.mantice.fault.ManticeException;

/** A result or what went wrong with a file. */
record Attempt<T>(Optional<T> result, Optional<Throwable> failure) {
    static <T> Attempt<T> at(Supplier<T> work) {
        try {
            return new Attempt<>(Optional.of(work.get()), Optional.empty());
        } catch (ManticeException | IllegalArgumentException e) {
            return new Attempt<>(Optional.empty(), Optional.of(e));
        }
    }

    void accept(Consumer<T> done, Consumer<Throwable> failed) {
        result.ifPresent(done);
        failure.ifPresent(failed);
    }
}
