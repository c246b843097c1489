package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class UncaughtTest {
    private final List<String> happened = new ArrayList<>();

    @Test
    void workIsSavedBeforeThePlayerIsTold() {
        Uncaught uncaught = new Uncaught(report -> happened.add("early"));
        uncaught.use(() -> happened.add("saved"), report -> happened.add("told " + report.contains("stuck")));

        uncaught.uncaughtException(Thread.currentThread(), new IllegalStateException("stuck"));

        assertThat(happened).containsExactly("saved", "told true");
    }

    @Test
    void aFaultWhileThePlayerReadsIsNotToldAgain() {
        Uncaught uncaught = new Uncaught(report -> {});
        uncaught.use(() -> happened.add("saved"), report -> {
            happened.add("told");
            uncaught.uncaughtException(Thread.currentThread(), new IllegalStateException("again"));
        });

        uncaught.uncaughtException(Thread.currentThread(), new IllegalStateException("first"));
        uncaught.uncaughtException(Thread.currentThread(), new IllegalStateException("later"));

        assertThat(happened).containsExactly("saved", "told", "saved", "saved", "told", "saved");
    }

    @Test
    void aCopyThatCannotBeWrittenIsPartOfTheReport() {
        Uncaught uncaught = new Uncaught(report -> {});
        uncaught.use(
                () -> {
                    throw new IllegalStateException("disk is full");
                },
                happened::add);

        uncaught.uncaughtException(Thread.currentThread(), new IllegalStateException("first"));

        assertThat(happened).singleElement().asString().contains("first", "disk is full");
    }
}
