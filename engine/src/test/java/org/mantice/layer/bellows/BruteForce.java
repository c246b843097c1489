package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.mantice.layer.bellows.StrokeSolver.Strokes;
import org.mantice.plan.Lock;
import org.mantice.player.Taste;
import org.mantice.rule.OpeningCell.Moment;

/** Tries every set of turns from every start. */
final class BruteForce {
    private final Ground ground;
    private final WeightedPrices prices;
    private final StrokePrices kinds;
    private final TurnLocks locks;
    private final int[] starts;
    private final List<Strokes> found = new ArrayList<>();

    BruteForce(Scene scene, Taste taste, List<? extends Lock> locks, int... starts) {
        this.ground = scene.ground();
        this.kinds = new StrokePrices(ground, scene.book());
        this.prices = new WeightedPrices(kinds, ground, taste);
        this.locks = new TurnLocks(ground, locks);
        this.starts = starts;
    }

    /** All plans, fewest concessions first, then cheapest, then earliest turns; one for each set of turns. */
    List<Strokes> all() {
        int inner = ground.last() - 1;
        if (inner > 20) throw new IllegalArgumentException("places is " + inner + "; allowed: up to 20");
        for (int set = 0; set < 1 << inner; set++) {
            List<Integer> places = new ArrayList<>(List.of(0));
            for (int place = 1; place <= inner; place++) if ((set >> place - 1 & 1) != 0) places.add(place);
            places.add(ground.last());
            if (isAllowed(places)) cheapest(places);
        }
        found.sort(Comparator.comparingLong(Strokes::concessions)
                .thenComparingLong(Strokes::cost)
                .thenComparing(BruteForce::byTurns));
        return found;
    }

    private static int byTurns(Strokes one, Strokes other) {
        for (int i = 0; i < Math.min(one.places().size(), other.places().size()); i++) {
            int order = Integer.compare(one.places().get(i), other.places().get(i));
            if (order != 0) return order;
        }
        return 0;
    }

    private boolean isAllowed(List<Integer> places) {
        for (int i = 0; i + 1 < places.size(); i++) {
            if (places.get(i + 1) > ground.furthest(places.get(i))) return false;
            if (ground.air.between(places.get(i), places.get(i + 1)) == 0) return false;
            if (places.get(i + 1) > locks.nextTurn(places.get(i)) || locks.isForbidden(places.get(i + 1))) return false;
        }
        return true;
    }

    private void cheapest(List<Integer> places) {
        Strokes best = null;
        for (int start : starts) {
            Strokes one = priced(places, start);
            if (one == null) continue;
            if (best == null
                    || one.concessions() < best.concessions()
                    || one.concessions() == best.concessions() && one.cost() < best.cost()) best = one;
        }
        if (best != null) found.add(best);
    }

    private Strokes priced(List<Integer> places, int start) {
        int level = start;
        long cost = prices.opening(Moment.START, ground.cell(start));
        long gives = prices.openingGives(Moment.START, ground.cell(start));
        for (int i = 0; i + 1 < places.size(); i++) {
            int from = places.get(i);
            int to = places.get(i + 1);
            int air = ground.air.between(from, to);
            level = i % 2 == 0 ? level + air : level - air;
            if (level < 0 || level > ground.full()) return null;
            boolean last = to == ground.last();
            Moment moment = last ? Moment.END : i % 2 == 0 ? Moment.TURN_IN : Moment.TURN_OUT;
            cost += prices.strokeCost[kinds.kind(from, to)] + prices.opening(moment, ground.cell(level));
            gives += prices.strokeGives[kinds.kind(from, to)] + prices.openingGives(moment, ground.cell(level));
            if (i > 0) cost += prices.pair(places.get(i - 1), from, to);
            if (!last) {
                cost += prices.turnCost[to];
                gives += prices.turnGives[to];
            }
        }
        return new Strokes(List.copyOf(places), start, cost, gives);
    }
}
