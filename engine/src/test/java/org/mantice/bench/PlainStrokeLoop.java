package org.mantice.bench;

import java.util.Arrays;
import org.mantice.search.StrokeLattice;

/**
 * The reference for strokes: one backward loop over plain arrays by (stroke, direction, opening in so many steps), amounts
 * rounded to steps, costs tabulated before. It proves nothing about exact openings and gives one cost only.
 */
final class PlainStrokeLoop {
    private static final long NONE = Long.MAX_VALUE / 2;

    private final int places;
    private final int levels;
    private final int[] first;
    private final int[] steps;
    private final long[] turn;
    private final long[][] pair;
    private final long[] end;

    PlainStrokeLoop(BellowsLikeLattice lattice, int levels) {
        this.levels = levels;
        places = lattice.places();
        first = new int[places + 1];
        for (int place = 0; place + 1 < places; place++) {
            int to = place + 1;
            while (to <= lattice.furthest(place) && lattice.amount(place, to) <= lattice.capacity()) to++;
            first[place + 1] = first[place] + to - place - 1;
        }
        first[places] = first[places - 1];
        steps = new int[first[places]];
        pair = new long[first[places]][];
        turn = new long[places];
        end = new long[levels];
        for (int step = 0; step < levels; step++)
            end[step] = lattice.endCost(1, StrokeLattice.Direction.RISING, step * BellowsLikeLattice.CELLS / levels);
        for (int place = 0; place + 1 < places; place++) {
            if (place > 0) turn[place] = lattice.turnCost(place, StrokeLattice.Direction.RISING);
            for (int stroke = first[place]; stroke < first[place + 1]; stroke++) {
                int to = place + 1 + stroke - first[place];
                steps[stroke] = lattice.amount(place, to) * levels / (lattice.capacity() + 1);
                pair[stroke] = new long[first[to + 1] - first[to]];
                for (int next = 0; next < pair[stroke].length; next++)
                    pair[stroke][next] = lattice.pairCost(place, to, to + 1 + next);
            }
        }
    }

    long best() {
        long[] toGo = new long[2 * steps.length * levels];
        for (int place = places - 2; place > 0; place--)
            for (int before = 0; before < place; before++) {
                int stroke = first[before] + place - before - 1;
                if (stroke >= first[before + 1]) continue;
                for (int direction = 0; direction < 2; direction++) fill(toGo, place, stroke, direction);
            }
        long best = NONE;
        for (int stroke = 0; stroke < first[1]; stroke++) {
            int level = levels / 10 + steps[stroke];
            if (level < levels) best = Math.min(best, end[level] + toGo[2 * stroke * levels + level]);
        }
        return best;
    }

    private void fill(long[] toGo, int place, int stroke, int direction) {
        int row = (2 * stroke + direction) * levels;
        Arrays.fill(toGo, row, row + levels, NONE);
        int rising = direction == 1 ? 1 : -1;
        for (int next = first[place]; next < first[place + 1]; next++) {
            int change = rising * steps[next];
            int ahead = (2 * next + 1 - direction) * levels;
            long own = turn[place] + pair[stroke][next - first[place]];
            for (int level = Math.max(0, -change); level < levels - Math.max(0, change); level++) {
                long one = own + end[level + change] + toGo[ahead + level + change];
                if (one < toGo[row + level]) toGo[row + level] = one;
            }
        }
    }
}
