package org.mantice.app.model;

import java.util.Optional;

/** Remembers what the player has decided, step by step, and whether it is on disk. */
final class Undoing {
    private record Memory(PlannerState state, Inside inside) {}

    private final Board board;
    private final History<Memory> history = new History<>();
    private long lastVersion;
    private long savedVersion;

    Undoing(Board board) {
        this.board = board;
    }

    /**
     * Called before a decision changes the state.
     *
     * @param key of the words for it
     * @param gesture decisions of one gesture are undone together; empty for none
     */
    void decide(String key, String gesture) {
        history.record(key, gesture, new Memory(board.state(), board.inside()));
    }

    void endGesture() {
        history.endGesture();
    }

    /** Called within the change that the decision makes. */
    void decided(Draft draft) {
        draft.version = ++lastVersion;
        show(draft);
    }

    private void show(Draft draft) {
        draft.undo = history.undoKey();
        draft.redo = history.redoKey();
        draft.unsaved = draft.version != savedVersion;
    }

    /** A new beginning: nothing can be undone, and nothing needs saving. */
    void forget(Draft draft) {
        history.clear();
        decided(draft);
        saved(draft);
    }

    void saved(Draft draft) {
        history.endGesture();
        savedVersion = draft.version;
        show(draft);
    }

    /** Whether the offers must be planned anew: what is remembered was not complete. */
    boolean undo() {
        return turn(history.undo(new Memory(board.state(), board.inside())));
    }

    boolean redo() {
        return turn(history.redo(new Memory(board.state(), board.inside())));
    }

    private boolean turn(Optional<Memory> remembered) {
        if (remembered.isEmpty()) return false;
        Memory memory = remembered.get();
        boolean sameQuestion = memory.state.setup().equals(board.state().setup())
                && memory.inside.leftOut().equals(board.inside().leftOut());
        boolean complete = !memory.state.isWorking();
        board.change(draft -> {
            draft.setup = memory.state.setup();
            draft.edited = memory.state.edited();
            draft.fallen = memory.state.fallen();
            draft.leftOut = memory.inside.leftOut();
            draft.version = memory.inside.version();
            Picks picks = memory.inside.picks().selecting(draft.picks.selected());
            draft.picks = picks;
            if (complete) bringBack(draft, memory);
            draft.pick();
            show(draft);
        });
        return !complete && !sameQuestion;
    }

    private static void bringBack(Draft draft, Memory memory) {
        draft.answer = memory.state.answer();
        draft.made = memory.inside.made();
        if (memory.state.performance().isPresent())
            draft.perform(memory.state.performance().get());
    }
}
