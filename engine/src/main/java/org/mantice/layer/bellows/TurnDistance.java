package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.List;

/**
 * How many turns differ from another plan's: moved by more than a beat, added or dropped. Turns of the one that have none
 * of the other within a beat are added, the other way round dropped; a moved turn is both. So the number of differences
 * is the larger of the two counts.
 */
final class TurnDistance {
    private static final long BEAT = 1_000_000;

    private final Ground ground;
    private final int[] turns;

    /** @param places of the strokes of the other plan, with the end */
    TurnDistance(Ground ground, List<Integer> places) {
        this.ground = ground;
        this.turns = places.subList(1, places.size() - 1).stream()
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Whether the stroke ends in a turn that the other plan has not. */
    int added(int from, int to) {
        if (to == ground.last()) return 0;
        for (int turn : turns) if (isNear(turn, to)) return 0;
        return 1;
    }

    /** Turns of the other plan that the stroke passes over. */
    int dropped(int from, int to) {
        int count = 0;
        for (int turn : turns) {
            if (turn <= from || turn >= to) continue;
            boolean kept = from != 0 && isNear(turn, from) || to != ground.last() && isNear(turn, to);
            if (!kept) count++;
        }
        return count;
    }

    int of(List<Integer> places) {
        int added = 0;
        int dropped = 0;
        for (int i = 0; i + 1 < places.size(); i++) {
            added += added(places.get(i), places.get(i + 1));
            dropped += dropped(places.get(i), places.get(i + 1));
        }
        return Math.max(added, dropped);
    }

    private boolean isNear(int one, int other) {
        return Math.abs(ground.place(one).microBeats() - ground.place(other).microBeats()) <= BEAT;
    }

    /** Places within a beat of a turn. */
    List<Integer> near() {
        List<Integer> near = new ArrayList<>();
        for (int place = 1; place < ground.last(); place++) if (added(0, place) == 0) near.add(place);
        return near;
    }
}
