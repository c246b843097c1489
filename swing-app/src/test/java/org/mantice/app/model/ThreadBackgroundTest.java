package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class ThreadBackgroundTest {
    private final BlockingQueue<Runnable> delivered = new LinkedBlockingQueue<>();
    private final Background background = new ThreadBackground(delivered::add, "planning");
    private final List<Object> told = new ArrayList<>();

    private void deliver(int pieces) throws InterruptedException {
        for (int i = 0; i < pieces; i++) delivered.take().run();
    }

    @Test
    void worksElsewhereAndTellsHere() throws Exception {
        List<Thread> thread = new ArrayList<>();
        background.<String, Integer>start(
                (interim, cancelled) -> {
                    thread.add(Thread.currentThread());
                    interim.accept("half");
                    return 2;
                },
                told::add,
                told::add,
                told::add);

        deliver(2);

        assertThat(told).containsExactly("half", 2);
        assertThat(thread.get(0)).isNotSameAs(Thread.currentThread());
        assertThat(thread.get(0).isDaemon()).isTrue();
        assertThat(thread.get(0).getName()).isEqualTo("planning");
    }

    @Test
    void onePieceComesAfterTheOther() throws Exception {
        for (int i = 0; i < 20; i++) {
            int number = i;
            background.start((interim, cancelled) -> number, interim -> {}, told::add, told::add);
        }

        deliver(20);

        assertThat(told).hasSize(20).isSortedAccordingTo((a, b) -> Integer.compare((int) a, (int) b));
    }

    @Test
    void whateverIsThrownIsTold() throws Exception {
        background.start(
                (interim, cancelled) -> {
                    throw new StackOverflowError("deep");
                },
                interim -> {},
                told::add,
                told::add);
        background.start((interim, cancelled) -> "next", interim -> {}, told::add, told::add);

        deliver(2);

        assertThat(told.get(0)).isInstanceOf(StackOverflowError.class);
        assertThat(told.get(1)).isEqualTo("next");
    }

    @Test
    void cancelledWorkTellsOfNothingAndBeginsNoMore() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch mayEnd = new CountDownLatch(1);
        List<Boolean> asked = new ArrayList<>();
        Background.Running first = background.start(
                (interim, cancelled) -> {
                    begun.countDown();
                    mayEnd.await();
                    asked.add(cancelled.getAsBoolean());
                    return "first";
                },
                interim -> {},
                told::add,
                told::add);
        Background.Running second = background.start(
                (interim, cancelled) -> {
                    asked.add(true);
                    return "second";
                },
                interim -> {},
                told::add,
                told::add);
        background.start((interim, cancelled) -> "third", interim -> {}, told::add, told::add);
        begun.await();

        first.cancel();
        second.cancel();
        mayEnd.countDown();
        deliver(2);

        assertThat(told).containsExactly("third");
        assertThat(asked).containsExactly(true);
        assertThat(delivered).isEmpty();
    }

    @Test
    void newsOnTheWayAreDroppedWhenTheWorkIsCancelled() throws Exception {
        Background.Running work = background.start((interim, cancelled) -> "late", interim -> {}, told::add, told::add);
        Runnable news = delivered.take();

        work.cancel();
        news.run();

        assertThat(told).isEmpty();
    }

    @Test
    void abandonedWorkIsLeftBehindAndTheNextGoesOn() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch never = new CountDownLatch(1);
        background.start(
                (interim, cancelled) -> {
                    begun.countDown();
                    never.await();
                    return "stuck";
                },
                interim -> {},
                told::add,
                told::add);
        background.start((interim, cancelled) -> "next", interim -> {}, told::add, told::add);
        begun.await();
        assertThat(delivered.poll(50, TimeUnit.MILLISECONDS)).isNull();

        background.abandon();
        deliver(1);
        never.countDown();
        background.start((interim, cancelled) -> "last", interim -> {}, told::add, told::add);
        while (told.size() < 2) deliver(1);

        assertThat(told).containsExactly("next", "last");
    }

    @Test
    void laterComesLaterUnlessCancelled() throws Exception {
        Background.Running no = background.later(Duration.ofMillis(5), () -> told.add("no"));
        background.later(Duration.ofMillis(10), () -> told.add("yes"));
        no.cancel();

        deliver(2);

        assertThat(told).containsExactly("yes");
    }
}
