package org.mantice.layer.bellows;

import java.util.Arrays;
import org.mantice.rule.OpeningCell.Moment;

/**
 * A lower bound for every stroke of all plans that take it, so that most places can be left out of the exact search
 * without loss. Pairs of strokes and the balance of the bellows are left out of account; of the openings at both ends of
 * a stroke with its air, the cheapest counts, half for each of the two strokes that share it. All costs here are doubled
 * for that half.
 *
 * <p>Time and memory grow with the number of strokes.
 */
final class StrokePruning {
    static final long UNREACHABLE = Long.MAX_VALUE / 4;

    private final Ground ground;
    private final StrokePrices kinds;
    private final WeightedPrices prices;
    private final TurnLocks locks;
    private final int[] starts;
    private final boolean giving;
    /** By place: least doubled cost, and concessions, up to a turn there; and from there to the end. */
    private final long[] before;

    private final long[] beforeGives;
    private final long[] after;
    private final long[] afterGives;
    private final long[] charge;
    private final long[] firstCharge;
    private final int bucket;

    StrokePruning(
            Ground ground, StrokePrices kinds, WeightedPrices prices, TurnLocks locks, int[] starts, boolean giving) {
        this.ground = ground;
        this.kinds = kinds;
        this.prices = prices;
        this.locks = locks;
        this.starts = starts;
        this.giving = giving;
        int places = ground.last() + 1;
        this.before = new long[places];
        this.beforeGives = new long[places];
        this.after = new long[places];
        this.afterGives = new long[places];
        this.bucket = Math.max(1, ground.full() / 256);
        this.charge = new long[ground.full() / bucket + 1];
        this.firstCharge = new long[charge.length];
        Arrays.fill(charge, -1);
        Arrays.fill(firstCharge, -1);
        forward();
        backward();
    }

    boolean reachable() {
        return before[ground.last()] < UNREACHABLE;
    }

    boolean isGiving() {
        return giving;
    }

    /** Doubled. */
    long best() {
        return before[ground.last()];
    }

    long bestGives() {
        return beforeGives[ground.last()];
    }

    /** Whether a plan may turn here within so much more than the bound. */
    boolean isWithin(int place, long limit) {
        if (place == 0 || place == ground.last()) return true;
        return isWithin(before[place], beforeGives[place], 0, 0, place, limit);
    }

    boolean isWithin(int from, int to, long limit) {
        if (!isPossible(from, to)) return false;
        return isWithin(before[from], beforeGives[from], cost(from, to), gives(from, to), to, limit);
    }

    private boolean isWithin(long cost, long gives, long own, long ownGives, int to, long limit) {
        if (cost >= UNREACHABLE || own >= UNREACHABLE || after[to] >= UNREACHABLE) return false;
        if (limit == Long.MAX_VALUE) return true;
        if (giving) {
            long total = GiveWayScale.SCALE.add(gives, GiveWayScale.SCALE.add(ownGives, afterGives[to]));
            if (total != bestGives()) return total < bestGives();
        }
        return cost + own + after[to] <= limit;
    }

    /** Physics and locks: air for it, air in it, no demanded turn inside, none forbidden at its end. */
    boolean isPossible(int from, int to) {
        if (to >= kinds.endOf(from) || to > locks.nextTurn(from)) return false;
        if (locks.isForbidden(from) && from != 0 || locks.isForbidden(to)) return false;
        int air = ground.air.between(from, to);
        return air <= ground.full() && (air > 0 || ground.air.total() == 0);
    }

    private long gives(int from, int to) {
        long stroke = prices.strokeGives[kinds.kind(from, to)];
        return to == ground.last() ? stroke : GiveWayScale.SCALE.add(stroke, prices.turnGives[to]);
    }

    /** Doubled cost of a possible stroke with the turn at its end and its share of the openings. */
    long cost(int from, int to) {
        if (!giving && gives(from, to) != 0) return UNREACHABLE;
        int air = ground.air.between(from, to);
        long opening = from == 0 ? first(air, to == ground.last()) : to == ground.last() ? 0 : charge(air);
        if (opening >= UNREACHABLE) return UNREACHABLE;
        long turn = to == ground.last() ? 0 : prices.turnCost[to];
        return 2 * (prices.strokeCost[kinds.kind(from, to)] + turn) + opening;
    }

    private void forward() {
        Arrays.fill(before, UNREACHABLE);
        before[0] = 0;
        for (int from = 0; from < ground.last(); from++) {
            if (before[from] >= UNREACHABLE) continue;
            for (int to = from + 1; to < kinds.endOf(from) && to <= locks.nextTurn(from); to++) {
                if (!isPossible(from, to)) continue;
                long own = cost(from, to);
                if (own >= UNREACHABLE) continue;
                long gives = giving ? GiveWayScale.SCALE.add(beforeGives[from], gives(from, to)) : 0;
                if (isBetter(gives, before[from] + own, beforeGives[to], before[to])) {
                    before[to] = before[from] + own;
                    beforeGives[to] = gives;
                }
            }
        }
    }

    private void backward() {
        Arrays.fill(after, UNREACHABLE);
        after[ground.last()] = 0;
        for (int from = ground.last() - 1; from >= 0; from--) {
            if (before[from] >= UNREACHABLE) continue;
            for (int to = from + 1; to < kinds.endOf(from) && to <= locks.nextTurn(from); to++) {
                if (after[to] >= UNREACHABLE || !isPossible(from, to)) continue;
                long own = cost(from, to);
                if (own >= UNREACHABLE) continue;
                long gives = giving ? GiveWayScale.SCALE.add(afterGives[to], gives(from, to)) : 0;
                if (isBetter(gives, after[to] + own, afterGives[from], after[from])) {
                    after[from] = after[to] + own;
                    afterGives[from] = gives;
                }
            }
        }
    }

    private static boolean isBetter(long gives, long cost, long thanGives, long thanCost) {
        if (thanCost >= UNREACHABLE) return true;
        return gives < thanGives || gives == thanGives && cost < thanCost;
    }

    private long charge(int air) {
        int at = air / bucket;
        if (charge[at] < 0) {
            long least = UNREACHABLE;
            for (int cell = 0; cell < ground.cells(); cell++) {
                long narrow = opening(Moment.TURN_OUT, cell);
                if (narrow >= least) continue;
                int low = ground.firstOf(cell) + at * bucket;
                int high = (cell + 1 < ground.cells() ? ground.firstOf(cell + 1) - 1 : ground.full())
                        + (at + 1) * bucket
                        - 1;
                long wide = cheapest(low, high);
                if (wide < UNREACHABLE) least = Math.min(least, narrow + wide);
            }
            charge[at] = least;
        }
        return charge[at];
    }

    private long first(int air, boolean last) {
        int at = air / bucket;
        if (last) return 0;
        if (firstCharge[at] < 0) {
            long least = UNREACHABLE;
            for (int start : starts) {
                long own = opening(Moment.START, ground.cell(start));
                long wide = cheapest(start + at * bucket, start + (at + 1) * bucket - 1);
                if (own < UNREACHABLE && wide < UNREACHABLE) least = Math.min(least, 2 * own + wide);
            }
            firstCharge[at] = least;
        }
        return firstCharge[at];
    }

    /** The cheapest opening at a turn from out to in between two levels. */
    private long cheapest(int low, int high) {
        if (low > ground.full()) return UNREACHABLE;
        long least = UNREACHABLE;
        int last = ground.cell(Math.min(high, ground.full()));
        for (int cell = ground.cell(low); cell <= last; cell++) least = Math.min(least, opening(Moment.TURN_IN, cell));
        return least;
    }

    /** Concessions of openings are not counted here; without concessions a banned opening is out of reach. */
    private long opening(Moment moment, int cell) {
        if (!giving && prices.openingGives(moment, cell) != 0) return UNREACHABLE;
        return prices.opening(moment, cell);
    }
}
