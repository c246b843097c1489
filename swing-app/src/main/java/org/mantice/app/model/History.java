package org.mantice.app.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * What can be undone and done again.
 *
 * @param <T> all that a step may change
 */
final class History<T> {
    /** Each step keeps whole plans: estimate of what memory allows for long tunes. */
    private static final int MOST_STEPS = 60;

    private record Step<T>(String key, String gesture, T other) {}

    private final Deque<Step<T>> done = new ArrayDeque<>();
    private final Deque<Step<T>> undone = new ArrayDeque<>();

    /** @param key of the words for what is done */
    void record(String key, T before) {
        record(key, "", before);
    }

    /** Steps of one gesture that follow each other are one step; an empty gesture is none. */
    void record(String key, String gesture, T before) {
        undone.clear();
        boolean goesOn = !gesture.isEmpty()
                && !done.isEmpty()
                && done.element().gesture().equals(gesture);
        if (goesOn) return;
        done.push(new Step<>(key, gesture, before));
        if (done.size() > MOST_STEPS) done.removeLast();
    }

    /** What comes next is a step of its own. */
    void endGesture() {
        if (!done.isEmpty()) {
            Step<T> last = done.pop();
            done.push(new Step<>(last.key(), "", last.other()));
        }
    }

    /** What was before the last step; empty if there is none. */
    Optional<T> undo(T now) {
        return turn(done, undone, now);
    }

    Optional<T> redo(T now) {
        return turn(undone, done, now);
    }

    private Optional<T> turn(Deque<Step<T>> from, Deque<Step<T>> to, T now) {
        if (from.isEmpty()) return Optional.empty();
        Step<T> step = from.pop();
        to.push(new Step<>(step.key(), "", now));
        return Optional.of(step.other());
    }

    Optional<String> undoKey() {
        return Optional.ofNullable(done.peek()).map(Step::key);
    }

    Optional<String> redoKey() {
        return Optional.ofNullable(undone.peek()).map(Step::key);
    }

    void clear() {
        done.clear();
        undone.clear();
    }
}
