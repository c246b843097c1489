package org.mantice.app.model;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** One daemon thread for the work; another that keeps the time sleeps until it is needed. */
public final class ThreadBackground implements Background {
    private final Executor deliver;
    private final String threadName;
    private final ScheduledExecutorService clock;
    private final LinkedBlockingQueue<Task<?, ?>> waiting = new LinkedBlockingQueue<>();
    private Optional<Worker> worker = Optional.empty();

    /** @param deliver runs what it is given on the thread that asks, in order, as {@code EventQueue::invokeLater} does */
    public ThreadBackground(Executor deliver, String threadName) {
        this.deliver = deliver;
        this.threadName = threadName;
        this.clock = Executors.newSingleThreadScheduledExecutor(daemons(threadName + " clock"));
    }

    private static ThreadFactory daemons(String name) {
        return work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        };
    }

    @Override
    public <I, R> Running start(Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed) {
        Task<I, R> task = new Task<>(deliver, work, interim, done, failed);
        waiting.add(task);
        synchronized (this) {
            if (worker.isEmpty()) hire();
        }
        return task;
    }

    private synchronized void hire() {
        Worker hired = new Worker();
        worker = Optional.of(hired);
        daemons(threadName).newThread(hired).start();
    }

    @Override
    public Running later(Duration wait, Runnable call) {
        Call later = new Call(call);
        clock.schedule(() -> deliver.execute(later), wait.toMillis(), TimeUnit.MILLISECONDS);
        return later;
    }

    @Override
    public synchronized void abandon() {
        worker.ifPresent(Worker::leave);
        hire();
    }

    /** Takes one task after the other until it is left to itself. */
    private final class Worker implements Runnable {
        private volatile boolean left;
        private volatile Optional<Task<?, ?>> current = Optional.empty();

        @Override
        public void run() {
            while (!left) {
                try {
                    Task<?, ?> task = waiting.take();
                    if (left) {
                        // Was waiting when it was left; the task is another's.
                        waiting.add(task);
                        return;
                    }
                    current = Optional.of(task);
                    task.run();
                } catch (InterruptedException e) {
                    return;
                }
            }
        }

        void leave() {
            left = true;
            current.ifPresent(Task::cancel);
        }
    }

    private static final class Call implements Runnable, Running {
        private final Runnable call;
        private volatile boolean cancelled;

        Call(Runnable call) {
            this.call = call;
        }

        @Override
        public void cancel() {
            cancelled = true;
        }

        @Override
        public void run() {
            if (!cancelled) call.run();
        }
    }

    private static final class Task<I, R> implements Running {
        private final Executor deliver;
        private final Work<I, R> work;
        private final Consumer<I> interim;
        private final Consumer<R> done;
        private final Consumer<Throwable> failed;
        private volatile boolean cancelled;

        Task(Executor deliver, Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed) {
            this.deliver = deliver;
            this.work = work;
            this.interim = interim;
            this.done = done;
            this.failed = failed;
        }

        @Override
        public void cancel() {
            cancelled = true;
        }

        /** Catches wide: rules are anybody's code, and whatever is thrown is told, not lost with the thread. */
        void run() {
            if (cancelled) return;
            try {
                R result = work.run(news -> tell(() -> interim.accept(news)), () -> cancelled);
                tell(() -> done.accept(result));
            } catch (Throwable thrown) {
                tell(() -> failed.accept(thrown));
            }
        }

        private void tell(Runnable news) {
            deliver.execute(() -> {
                if (!cancelled) news.run();
            });
        }
    }
}
