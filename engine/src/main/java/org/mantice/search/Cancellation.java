package org.mantice.search;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Stops a search that is no longer wanted. */
final class Cancellation {
    /** For searches that nobody stops. */
    static final BooleanSupplier NEVER = () -> false;

    private Cancellation() {}

    /** Throws {@link CancellationException} if the search is no longer wanted. */
    static void check(BooleanSupplier cancelled) {
        if (cancelled.getAsBoolean()) throw new CancellationException("search cancelled");
    }
}
