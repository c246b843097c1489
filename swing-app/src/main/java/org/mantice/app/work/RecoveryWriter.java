package org.mantice.app.work;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;

/**
 * Writes the recovery copy some time after a change, on another thread, and not more often than is good: of the changes
 * between two writes only the last counts.
 */
public final class RecoveryWriter {
    /** Runs work on another thread after a while, one piece after the other. */
    public interface Later {
        void run(Duration delay, Runnable work);

        /** @param executor with one thread */
        static Later on(Executor executor) {
            return (delay, work) -> CompletableFuture.delayedExecutor(delay.toMillis(), TimeUnit.MILLISECONDS, executor)
                    .execute(work);
        }
    }

    private final RecoveryCopy copy;
    private final Later later;
    private final InstantSource clock;
    private final Duration pause;
    private Optional<UnsavedWork> waiting = Optional.empty();
    private Instant lastWrite = Instant.EPOCH;
    private boolean scheduled;

    /** @param pause from one write to the next, at least; not negative */
    public RecoveryWriter(RecoveryCopy copy, Later later, InstantSource clock, Duration pause) {
        if (pause.isNegative()) throw new IllegalArgumentException("pause is " + pause + "; allowed: 0 or more");
        this.copy = copy;
        this.later = later;
        this.clock = clock;
        this.pause = pause;
    }

    /** Something is unsaved. Returns at once. */
    public synchronized void changed(UnsavedWork work) {
        waiting = Optional.of(work);
        if (scheduled) return;
        scheduled = true;
        later.run(untilNext(), this::write);
    }

    /** Nothing is unsaved any more: the copy goes, and what was waiting is not written. Returns at once. */
    public synchronized void saved() {
        waiting = Optional.empty();
        later.run(Duration.ZERO, this::removeUnlessChanged);
    }

    /** Between nothing and the pause, also when somebody has set the clock back. */
    private Duration untilNext() {
        Duration left = pause.minus(Duration.between(lastWrite, clock.instant()));
        if (left.isNegative()) return Duration.ZERO;
        return left.compareTo(pause) > 0 ? pause : left;
    }

    private void write() {
        Optional<UnsavedWork> work;
        synchronized (this) {
            scheduled = false;
            work = waiting;
            waiting = Optional.empty();
            if (work.isPresent()) lastWrite = clock.instant();
        }
        work.ifPresent(copy::write);
    }

    private void removeUnlessChanged() {
        boolean unsaved;
        synchronized (this) {
            unsaved = waiting.isPresent();
        }
        if (!unsaved) copy.remove();
    }
}
