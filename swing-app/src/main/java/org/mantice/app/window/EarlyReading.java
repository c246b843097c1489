package org.mantice.app.window;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.mantice.app.work.Opened;
import org.mantice.app.work.TuneOpening;
import org.mantice.fault.ManticeException;

/** The first tune, being read on a thread of its own while the window is made. */
public final class EarlyReading {
    private final FutureTask<Opened> reading;

    private EarlyReading(Supplier<Opened> work) {
        reading = new FutureTask<>(work::get);
        Thread thread = new Thread(reading, "mantice early reading");
        thread.setDaemon(true);
        thread.start();
    }

    public static EarlyReading ofExample() {
        return new EarlyReading(TuneOpening::example);
    }

    static EarlyReading of(Path file) {
        return new EarlyReading(() -> TuneOpening.open(file));
    }

    /** Waits for the end of the reading, but not for long. */
    void waitAtMost(Duration time) throws InterruptedException {
        try {
            reading.get(time.toMillis(), TimeUnit.MILLISECONDS);
        } catch (ExecutionException | TimeoutException e) {
            // Whoever asks for the tune learns of it.
            return;
        }
    }

    /** The tune, if that is what was read and the reading has come to a good end. */
    Optional<Opened.Tune> tuneIfRead() {
        if (!reading.isDone()) return Optional.empty();
        try {
            return get() instanceof Opened.Tune tune ? Optional.of(tune) : Optional.empty();
        } catch (ManticeException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** What was read, once it is; throws what the reading threw. Waits, so it is not for the window's thread. */
    Opened get() {
        try {
            return reading.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) throw error;
            if (e.getCause() instanceof RuntimeException failure) throw failure;
            throw new IllegalStateException("the first tune cannot be read", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("nobody waits for the first tune", e);
        }
    }
}
