package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.mantice.layer.Pricing;
import org.mantice.layer.Tables;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.Rule;
import org.mantice.search.Transition;

/**
 * The moves from the pairs of one junction to those of the next, and what each rule charges for three moments in a row.
 * Most triples cost nothing, so only charged ones are kept.
 */
final class TripleTable {
    /** The charged edges of one rule, ascending, and what they cost. */
    static final class Charges {
        private final int[] edges;
        private final int[] costs;

        Charges(int[] edges, int[] costs) {
            this.edges = edges;
            this.costs = costs;
        }

        int[] edges() {
            return edges;
        }

        int[] costs() {
            return costs;
        }

        int at(int edge) {
            int found = Arrays.binarySearch(edges, edge);
            return found < 0 ? 0 : costs[found];
        }
    }

    final Transition shape;
    /** By rule. */
    final List<Charges> charges;

    private TripleTable(Transition shape, List<Charges> charges) {
        this.shape = shape;
        this.charges = List.copyOf(charges);
    }

    /** From the postures of the first moment to its pairs. */
    static TripleTable first(PairTable pairs) {
        int[] target = new int[pairs.pairs()];
        for (int pair = 0; pair < target.length; pair++) target[pair] = pair;
        return new TripleTable(Transition.of(pairs.start, target, new long[target.length], target.length), List.of());
    }

    static TripleTable of(
            PairTable first,
            List<FingerPair> firstSteps,
            PairTable second,
            List<FingerPair> secondSteps,
            List<Rule<FingerTriple>> rules,
            String place) {
        Transition shape = shape(first, second);
        List<FingerTriple> steps = new ArrayList<>(rules.isEmpty() ? 0 : shape.edges());
        for (int pair = 0; pair < first.pairs() && !rules.isEmpty(); pair++)
            for (int next = second.start[first.target[pair]]; next < second.start[first.target[pair] + 1]; next++)
                steps.add(new FingerTriple(firstSteps.get(pair), secondSteps.get(next)));
        return new TripleTable(
                shape, rules.stream().map(rule -> charges(rule, steps, place)).toList());
    }

    private static Transition shape(PairTable first, PairTable second) {
        int[] start = new int[first.pairs() + 1];
        for (int pair = 0; pair < first.pairs(); pair++) {
            int middle = first.target[pair];
            start[pair + 1] = start[pair] + second.start[middle + 1] - second.start[middle];
        }
        int[] target = new int[start[first.pairs()]];
        for (int pair = 0; pair < first.pairs(); pair++)
            for (int edge = start[pair], to = second.start[first.target[pair]]; edge < start[pair + 1]; edge++, to++)
                target[edge] = to;
        return Transition.of(start, target, new long[target.length], second.pairs());
    }

    private static Charges charges(Rule<FingerTriple> rule, List<FingerTriple> steps, String place) {
        int[] edges = new int[steps.size()];
        int[] costs = new int[steps.size()];
        int count = 0;
        for (int edge = 0; edge < steps.size(); edge++) {
            int cost = Tables.stored(Pricing.cost(rule, steps.get(edge), place));
            if (cost == 0) continue;
            edges[count] = edge;
            costs[count++] = cost;
        }
        return new Charges(Arrays.copyOf(edges, count), Arrays.copyOf(costs, count));
    }
}
