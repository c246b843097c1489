package org.mantice.layer.righthand;

import java.util.Arrays;
import java.util.List;
import org.mantice.layer.Pricing;
import org.mantice.layer.Tables;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;

/**
 * The pairs of postures that may follow each other at a junction, and what each rule charges for them. Pairs are
 * ordered by the first posture, then the second. A hand that moves lands where its fingers rest or a little opened; a hand that stays may
 * reach.
 */
final class PairTable {
    final MomentTable from;
    final MomentTable to;
    /** Index of the first pair of every posture before, and one last entry: the number of pairs. */
    final int[] start;
    /** The posture after, by pair. */
    final int[] target;
    /** By rule and pair. */
    final int[][] costs;

    private PairTable(MomentTable from, MomentTable to, int[] start, int[] target, int[][] costs) {
        this.from = from;
        this.to = to;
        this.start = start;
        this.target = target;
        this.costs = costs;
    }

    /** @param steps receives the step of every pair */
    static PairTable of(
            Junction junction,
            MomentTable from,
            MomentTable to,
            List<Rule<FingerPair>> rules,
            List<FingerPair> steps,
            String place) {
        int[] start = new int[from.postures.size() + 1];
        int[] target = new int[from.postures.size() * to.postures.size()];
        int pairs = 0;
        for (int before = 0; before < from.postures.size(); before++) {
            for (int after = 0; after < to.postures.size(); after++) {
                if (from.postures.get(before).place() != to.postures.get(after).place()
                        && !to.postures.get(after).landing()) continue;
                FingerPair step = step(junction, from, before, to, after);
                if (step.move() != HandMove.STAY && !to.postures.get(after).landing()) continue;
                steps.add(step);
                target[pairs++] = after;
            }
            start[before + 1] = pairs;
        }
        int[][] costs = new int[rules.size()][pairs];
        for (int rule = 0; rule < costs.length; rule++)
            for (int pair = 0; pair < pairs; pair++)
                costs[rule][pair] = Tables.stored(Pricing.cost(rules.get(rule), steps.get(pair), place));
        return new PairTable(from, to, start, Arrays.copyOf(target, pairs), costs);
    }

    private static FingerPair step(Junction junction, MomentTable from, int before, MomentTable to, int after) {
        return HandMoves.step(junction, from.steps.get(before), to.steps.get(after));
    }

    int pairs() {
        return target.length;
    }

    /** The pair of two postures, or -1. */
    int pair(int before, int after) {
        int found = Arrays.binarySearch(target, start[before], start[before + 1], after);
        return found < 0 ? -1 : found;
    }

    /** The posture before, by pair. */
    int source(int pair) {
        int found = Arrays.binarySearch(start, pair);
        if (found < 0) return -found - 2;
        while (found + 1 < start.length && start[found + 1] == pair) found++;
        return found;
    }
}
