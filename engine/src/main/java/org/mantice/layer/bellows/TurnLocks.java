package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.List;
import org.mantice.plan.Lock;

/**
 * What the player has decided about turns, by place. A lock without a pass holds each time through. A turn demanded where
 * the performance begins is met by beginning.
 */
final class TurnLocks {
    /** The last place up to which a stroke from a place may go: the next demanded turn. */
    private final int[] nextTurn;

    private final boolean[] forbidden;
    private final List<Lock.Turn> unmet = new ArrayList<>();

    TurnLocks(Ground ground, List<? extends Lock> locks) {
        int last = ground.last();
        boolean[] demanded = new boolean[last + 1];
        forbidden = new boolean[last + 1];
        demanded[last] = true;
        for (Lock lock : locks) if (lock instanceof Lock.Turn turn && !apply(ground, turn, demanded)) unmet.add(turn);
        nextTurn = new int[last + 1];
        for (int place = last, next = last; place >= 0; place--) {
            nextTurn[place] = next;
            if (demanded[place]) next = place;
        }
    }

    private boolean apply(Ground ground, Lock.Turn turn, boolean[] demanded) {
        boolean met = !turn.turn();
        for (int place = 0; place < ground.last(); place++) {
            Candidate at = ground.place(place);
            if (!turn.appliesTo(at.pass()) || !turn.place().equals(at.place())) continue;
            met = true;
            if (place == 0) continue;
            if (turn.turn()) demanded[place] = true;
            else forbidden[place] = true;
        }
        return met;
    }

    /** Locks that ask for a turn where none is possible. */
    List<Lock.Turn> unmet() {
        return unmet;
    }

    boolean isForbidden(int place) {
        return forbidden[place];
    }

    int nextTurn(int from) {
        return nextTurn[from];
    }
}
