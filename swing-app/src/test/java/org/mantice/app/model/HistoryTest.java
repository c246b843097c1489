package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HistoryTest {
    private final History<String> history = new History<>();

    @Test
    void stepsAreUndoneAndDoneAgainInOrder() {
        history.record("first", "0");
        history.record("second", "1");

        assertThat(history.undoKey()).contains("second");
        assertThat(history.undo("2")).contains("1");
        assertThat(history.undo("1")).contains("0");
        assertThat(history.undo("0")).isEmpty();
        assertThat(history.redoKey()).contains("first");
        assertThat(history.redo("0")).contains("1");
        assertThat(history.redo("1")).contains("2");
        assertThat(history.redo("2")).isEmpty();
    }

    @Test
    void aNewStepForgetsWhatWasUndone() {
        history.record("first", "0");
        history.undo("1");

        history.record("other", "0");

        assertThat(history.redoKey()).isEmpty();
        assertThat(history.undo("2")).contains("0");
    }

    @Test
    void oneGestureIsOneStepUntilSomethingElseComesBetween() {
        history.record("weight", "a", "0");
        history.record("weight", "a", "1");
        history.record("weight", "b", "2");
        history.record("weight", "b", "3");
        history.endGesture();
        history.record("weight", "b", "4");

        assertThat(history.undo("5")).contains("4");
        assertThat(history.undo("4")).contains("2");
        assertThat(history.undo("2")).contains("0");
        assertThat(history.undoKey()).isEmpty();
    }

    @Test
    void stepsWithoutAGestureAreNeverJoined() {
        history.record("lock", "0");
        history.record("lock", "1");

        assertThat(history.undo("2")).contains("1");
    }

    @Test
    void aGestureThatWasUndoneDoesNotGoOn() {
        history.record("weight", "a", "0");
        history.undo("1");
        history.redo("0");

        history.record("weight", "a", "1");

        assertThat(history.undo("2")).contains("1");
    }

    @Test
    void onlySoManyStepsAreKept() {
        for (int step = 0; step < 100; step++) history.record("step", String.valueOf(step));

        int undone = 0;
        while (history.undo("now").isPresent()) undone++;

        assertThat(undone).isEqualTo(60);
    }
}
