package org.mantice.performance;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Tune;

/**
 * Slurs over the melody events of the whole written tune, counted from 0. Ends are matched with the nearest open start;
 * a slur that never ends, or never starts, is passed over.
 */
final class SlurMap {
    private final List<Integer> firstOfMeasure = new ArrayList<>();
    private final int[] openAfter;
    private final boolean[] endsAt;

    SlurMap(Tune tune) {
        int count = 0;
        for (Measure measure : tune.measures()) {
            firstOfMeasure.add(count);
            count += measure.melody().size();
        }
        openAfter = new int[count];
        endsAt = new boolean[count];
        Deque<Integer> open = new ArrayDeque<>();
        int event = 0;
        int[] change = new int[count + 1];
        for (Measure measure : tune.measures())
            for (MelodyEvent written : measure.melody()) {
                for (int i = 0; i < written.marks().slurStops() && !open.isEmpty(); i++) {
                    change[open.pop()]++;
                    change[event]--;
                    endsAt[event] = true;
                }
                for (int i = 0; i < written.marks().slurStarts(); i++) open.push(event);
                event++;
            }
        int running = 0;
        for (int i = 0; i < count; i++) openAfter[i] = running += change[i];
    }

    int indexOf(int measure, int eventInMeasure) {
        return firstOfMeasure.get(measure) + eventInMeasure;
    }

    boolean endsAt(int event) {
        return endsAt[event];
    }

    /** Whether a slur leads from one event to the one played next; across a jump it must be open on both sides. */
    boolean joins(int event, int next) {
        return openAfter[event] > 0 && next > 0 && openAfter[next - 1] > 0;
    }
}
