package org.mantice.app.model;

import java.util.List;
import java.util.function.Consumer;

/** Views that listen together for as long as they are seen. On the thread of the model. */
public final class Listening {
    private final Board board;
    private final List<Consumer<PlannerState>> listeners;
    private boolean paused;
    private boolean over;

    Listening(Board board, List<Consumer<PlannerState>> listeners) {
        this.board = board;
        this.listeners = List.copyOf(listeners);
    }

    /** They are told nothing while nobody sees them. */
    public void pause() {
        paused = true;
        listeners.forEach(board::removeListener);
    }

    /** They are told how things are now, and listen again. */
    public void resume() {
        if (!paused || over) return;
        paused = false;
        listeners.forEach(board::addListener);
        for (Consumer<PlannerState> listener : listeners) listener.accept(board.state());
    }

    /** For good: they are thrown away. */
    public void letGo() {
        over = true;
        listeners.forEach(board::removeListener);
    }
}
