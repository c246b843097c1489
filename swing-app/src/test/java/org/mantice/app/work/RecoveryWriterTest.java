package org.mantice.app.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoveryWriterTest {
    private static final Duration PAUSE = Duration.ofSeconds(5);

    private record Job(Instant at, Runnable work) {}

    @TempDir
    Path temp;

    private final List<Job> jobs = new ArrayList<>();
    private Instant now = Instant.parse("2031-05-04T10:00:00Z");
    private AppFolder folder;
    private RecoveryCopy copy;
    private RecoveryWriter writer;

    @BeforeEach
    void start() {
        folder = new AppFolder(temp, temp, notice -> {});
        copy = new RecoveryCopy(folder, () -> now);
        writer = new RecoveryWriter(copy, (delay, work) -> jobs.add(new Job(now.plus(delay), work)), () -> now, PAUSE);
    }

    @AfterEach
    void end() {
        copy.close();
    }

    /** Lets time pass; what is due runs at its time. */
    private void pass(Duration time) {
        Instant until = now.plus(time);
        for (Optional<Job> due = due(until); due.isPresent(); due = due(until)) {
            jobs.remove(due.get());
            now = due.get().at();
            due.get().work().run();
        }
        now = until;
    }

    private Optional<Job> due(Instant until) {
        return jobs.stream().filter(job -> !job.at().isAfter(until)).findFirst();
    }

    private Optional<Instant> writtenAt() throws IOException {
        if (!Files.exists(folder.recovery())) return Optional.empty();
        try (Stream<Path> files = Files.list(folder.recovery())) {
            Optional<Path> file = files.filter(path -> path.toString().endsWith(RecoveryFolder.SUFFIX))
                    .findFirst();
            return file.isPresent()
                    ? Optional.of(RecoveryArchive.head(file.get()).writtenAt())
                    : Optional.empty();
        }
    }

    @Test
    void firstChangeIsWrittenAtOnceButNotOnTheCallersThread() throws IOException {
        Instant start = now;

        writer.changed(Works.unplanned());
        assertThat(writtenAt()).isEmpty();
        pass(Duration.ZERO);

        assertThat(writtenAt()).contains(start);
    }

    @Test
    void manyChangesMakeOneWriteAPauseWithTheLastOfThem() throws IOException {
        Instant start = now;
        UnsavedWork first = Works.unplanned();
        Path last = temp.resolve("last.plan.json");
        writer.changed(first);
        pass(Duration.ofSeconds(1));

        for (int i = 0; i < 3; i++) {
            writer.changed(first);
            pass(Duration.ofSeconds(1));
        }
        writer.changed(
                new UnsavedWork(first.tune(), first.content(), first.setup(), Optional.empty(), Optional.of(last)));
        assertThat(jobs).hasSize(1);
        assertThat(writtenAt()).contains(start);
        pass(Duration.ofSeconds(10));

        assertThat(writtenAt()).contains(start.plus(PAUSE));
        assertThat(jobs).isEmpty();
        copyIsOf(last);
    }

    private void copyIsOf(Path savedTo) throws IOException {
        try (Stream<Path> files = Files.list(folder.recovery())) {
            Path file = files.filter(path -> path.toString().endsWith(RecoveryFolder.SUFFIX))
                    .findFirst()
                    .orElseThrow();
            assertThat(RecoveryArchive.head(file).savedTo()).contains(savedTo);
        }
    }

    @Test
    void savedWorkLeavesNoCopyAndNothingWaiting() throws IOException {
        writer.changed(Works.unplanned());
        pass(Duration.ofSeconds(1));
        writer.changed(Works.unplanned());

        writer.saved();
        pass(Duration.ofMinutes(1));

        assertThat(writtenAt()).isEmpty();
        assertThat(jobs).isEmpty();
    }

    @Test
    void changeAfterSavingIsWritten() throws IOException {
        writer.changed(Works.unplanned());
        pass(Duration.ofSeconds(1));

        writer.saved();
        writer.changed(Works.unplanned());
        pass(Duration.ofMinutes(1));

        assertThat(writtenAt()).isPresent();
    }

    @Test
    void clockSetBackDelaysByNoMoreThanThePause() {
        writer.changed(Works.unplanned());
        pass(Duration.ofSeconds(1));
        now = now.minus(Duration.ofHours(1));

        writer.changed(Works.unplanned());

        assertThat(jobs).extracting(Job::at).containsExactly(now.plus(PAUSE));
    }

    @Test
    void writesOnTheExecutorGiven() throws Exception {
        CompletableFuture<String> thread = new CompletableFuture<>();
        RecoveryWriter real = new RecoveryWriter(
                copy,
                RecoveryWriter.Later.on(work -> {
                    work.run();
                    thread.complete(Thread.currentThread().getName());
                }),
                () -> now,
                PAUSE);

        real.changed(Works.unplanned());

        assertThat(thread.get(30, TimeUnit.SECONDS))
                .isNotEqualTo(Thread.currentThread().getName());
        assertThat(writtenAt()).contains(now);
    }
}
