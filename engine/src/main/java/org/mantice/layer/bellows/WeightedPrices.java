package org.mantice.layer.bellows;

import java.util.List;
import org.mantice.player.Taste;
import org.mantice.rule.GiveWay;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.Rule;

/**
 * The kept prices under one taste: micropoints, and packed concessions where a rule bans. A rule switched off charges
 * and bans nothing. That a turn falls into a held note or under
 * a held chord is counted as a concession whatever the rules say.
 */
final class WeightedPrices {
    private final StrokePrices prices;
    private final Ground ground;
    final long[] turnCost;
    final long[] turnGives;
    final long[] strokeCost;
    final long[] strokeGives;
    final long[] openingCost;
    final long[] openingGives;
    private final long[] pairCost;
    private final int kinds;

    WeightedPrices(StrokePrices prices, Ground ground, Taste taste) {
        this.prices = prices;
        this.ground = ground;
        this.kinds = prices.strokeKinds.size();
        int placeKinds = prices.turns.length == 0 ? 0 : prices.turns[0].length;
        long[] kindGives = new long[placeKinds];
        long[] kindCost = sum(prices.turns, prices.turnRules, placeKinds, kindGives, taste);
        turnCost = new long[ground.last() + 1];
        turnGives = new long[ground.last() + 1];
        for (int place = 1; place < ground.last(); place++) {
            if (placeKinds > 0) {
                turnCost[place] = kindCost[prices.placeKind[place]];
                turnGives[place] = kindGives[prices.placeKind[place]];
            }
            if (ground.place(place).facts().heldNote()) give(place, GiveWay.TURN_IN_HELD_NOTE);
            if (ground.place(place).facts().heldChord()) give(place, GiveWay.TURN_UNDER_SUSTAINED_CHORD);
        }
        strokeGives = new long[kinds];
        strokeCost = sum(prices.strokes, prices.strokeRules, kinds, strokeGives, taste);
        int cells = OpeningCell.Moment.values().length * ground.cells();
        openingGives = new long[cells];
        openingCost = sum(prices.openings, prices.openingRules, cells, openingGives, taste);
        pairCost = new long[kinds * kinds];
        for (int rule = 0; rule < prices.pairs.length; rule++) {
            long weight = taste.perMille(prices.pairRules.get(rule).info().id());
            int[] costs = prices.pairs[rule];
            for (int i = 0; i < pairCost.length; i++) pairCost[i] += weight * costs[i];
        }
    }

    private void give(int place, GiveWay what) {
        turnGives[place] = GiveWayScale.SCALE.add(turnGives[place], GiveWayScale.one(what));
    }

    private static long[] sum(long[][] costs, List<? extends Rule<?>> rules, int size, long[] gives, Taste taste) {
        long[] sum = new long[size];
        for (int rule = 0; rule < costs.length; rule++) {
            long weight = taste.perMille(rules.get(rule).info().id());
            if (weight == 0) continue;
            for (int i = 0; i < size; i++) {
                if (costs[rule][i] == Rule.BAN) {
                    GiveWay what = rules.get(rule).info().banGivesWay().orElseThrow();
                    gives[i] = GiveWayScale.SCALE.add(gives[i], GiveWayScale.one(what));
                } else sum[i] = Math.addExact(sum[i], Math.multiplyExact(weight, costs[rule][i]));
            }
        }
        return sum;
    }

    long pair(int first, int middle, int last) {
        return pairCost[prices.kind(first, middle) * kinds + prices.kind(middle, last)];
    }

    long pairOfKinds(int first, int second) {
        return pairCost[first * kinds + second];
    }

    int kind(int from, int to) {
        return prices.kind(from, to);
    }

    long opening(OpeningCell.Moment moment, int cell) {
        return openingCost[moment.ordinal() * ground.cells() + cell];
    }

    long openingGives(OpeningCell.Moment moment, int cell) {
        return openingGives[moment.ordinal() * ground.cells() + cell];
    }
}
