package org.mantice.app.model;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;

/**
 * Does the work when it is told to, one piece after the other, and hands over what came of it when it is told to. With
 * {@link #rude} it tells even of work that was cancelled, as no background should.
 */
public final class SteppedBackground implements Background {
    private final Deque<Task<?, ?>> waiting = new ArrayDeque<>();
    private final Deque<Runnable> news = new ArrayDeque<>();
    private final List<Runnable> calls = new ArrayList<>();
    private boolean rude;
    private int begun;
    private int abandoned;

    /** Tells also of cancelled work from now on. */
    public void rude() {
        rude = true;
    }

    /** Does all work that waits, and the work that comes of it, and tells of it. */
    public void runAll() {
        do {
            work();
            tell();
        } while (!waiting.isEmpty());
    }

    /** Does the work that waits; nothing is told yet. */
    public void work() {
        for (int left = waiting.size(); left > 0; left--) waiting.pop().run();
    }

    /** Tells everything that there is to tell. */
    public void tell() {
        while (!news.isEmpty()) news.pop().run();
    }

    /** Tells the next few pieces of news. */
    public void tell(int pieces) {
        for (int i = 0; i < pieces; i++) news.pop().run();
    }

    public int news() {
        return news.size();
    }

    /** Pieces of work that have begun so far. */
    public int begun() {
        return begun;
    }

    public int abandoned() {
        return abandoned;
    }

    @Override
    public <I, R> Running start(Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed) {
        Task<I, R> task = new Task<>(work, interim, done, failed);
        waiting.add(task);
        return task;
    }

    /** Lets time pass: makes the calls that wait for it. */
    public void timePasses() {
        List<Runnable> due = List.copyOf(calls);
        calls.clear();
        due.forEach(Runnable::run);
    }

    @Override
    public Running later(Duration wait, Runnable call) {
        calls.add(call);
        return () -> calls.remove(call);
    }

    @Override
    public void abandon() {
        abandoned++;
    }

    private final class Task<I, R> implements Running {
        private final Work<I, R> work;
        private final Consumer<I> interim;
        private final Consumer<R> done;
        private final Consumer<Throwable> failed;
        private boolean cancelled;

        Task(Work<I, R> work, Consumer<I> interim, Consumer<R> done, Consumer<Throwable> failed) {
            this.work = work;
            this.interim = interim;
            this.done = done;
            this.failed = failed;
        }

        @Override
        public void cancel() {
            cancelled = true;
        }

        void run() {
            if (cancelled && !rude) return;
            begun++;
            try {
                R result = work.run(some -> add(() -> interim.accept(some)), () -> cancelled && !rude);
                add(() -> done.accept(result));
            } catch (Exception e) {
                add(() -> failed.accept(e));
            }
        }

        private void add(Runnable telling) {
            news.add(() -> {
                if (!cancelled || rude) telling.run();
            });
        }
    }
}
