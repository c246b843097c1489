package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.instrument.StradellaBass;
import org.mantice.layer.Pricing;
import org.mantice.layer.RuleBook;
import org.mantice.layer.Tables;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.ButtonPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;

/**
 * What every rule charges in every distinct context, as plain ints; the only place that calls rules while a layer is
 * made.
 */
final class RuleTables {
    final List<Rule<ButtonMoment>> momentRules;
    final List<Rule<ButtonPair>> pairRules;
    private final MoveTime moveTime;
    private final StradellaBass layout;
    private final Map<Integer, int[][]> moments = new HashMap<>();
    private final Map<PairKey, PairTable> pairs = new HashMap<>();

    /** What two neighbouring beats have in common with all equal neighbours. */
    private record PairKey(int from, int to, long availableMillis) {}

    /** Costs of all moves between two state spaces. */
    static final class PairTable {
        private final int id;
        private final MomentSpace from;
        private final MomentSpace to;
        private final long availableMillis;
        private final int[][] costs;

        PairTable(int id, MomentSpace from, MomentSpace to, long availableMillis, int[][] costs) {
            this.id = id;
            this.from = from;
            this.to = to;
            this.availableMillis = availableMillis;
            this.costs = costs;
        }

        int id() {
            return id;
        }

        MomentSpace from() {
            return from;
        }

        MomentSpace to() {
            return to;
        }

        long availableMillis() {
            return availableMillis;
        }

        /** By rule, then by source way × number of target ways + target way. */
        int[][] costs() {
            return costs;
        }
    }

    RuleTables(RuleBook book, MoveTime moveTime, StradellaBass layout) {
        this.momentRules = book.rules(RuleSet.JUMP_COST, ButtonMoment.class);
        this.pairRules = book.rules(RuleSet.JUMP_COST, ButtonPair.class);
        this.moveTime = moveTime;
        this.layout = layout;
    }

    /** @param place where the context first occurs, for messages */
    int[][] moments(MomentSpace space, String place) {
        int[][] known = moments.get(space.id());
        if (known != null) return known;
        int[][] costs = new int[momentRules.size()][space.size()];
        for (int rule = 0; rule < costs.length; rule++)
            for (int state = 0; state < space.size(); state++)
                costs[rule][state] = Tables.stored(
                        Pricing.cost(momentRules.get(rule), space.moments().get(state), place));
        moments.put(space.id(), costs);
        return costs;
    }

    PairTable pairs(MomentSpace from, MomentSpace to, long availableMillis, String place) {
        PairKey key = new PairKey(from.id(), to.id(), availableMillis);
        PairTable known = pairs.get(key);
        if (known != null) return known;
        int[][] costs = new int[pairRules.size()][Math.multiplyExact(from.size(), to.size())];
        for (int source = 0; source < from.size(); source++)
            for (int target = 0; target < to.size(); target++) {
                ButtonPair pair = pair(from.moments().get(source), to.moments().get(target), availableMillis);
                for (int rule = 0; rule < costs.length; rule++)
                    costs[rule][source * to.size() + target] =
                            Tables.stored(Pricing.cost(pairRules.get(rule), pair, place));
            }
        PairTable made = new PairTable(pairs.size(), from, to, availableMillis, costs);
        pairs.put(key, made);
        return made;
    }

    ButtonPair pair(ButtonMoment from, ButtonMoment to, long availableMillis) {
        return new ButtonPair(
                from,
                to,
                moveTime.millis(to.handColumn() - from.handColumn()),
                availableMillis,
                layout.columnsToMark(to.handColumn()));
    }

    int pairTables() {
        return pairs.size();
    }

    /** Those of every reach. */
    List<Rule<?>> rules() {
        List<Rule<?>> rules = new ArrayList<>(momentRules);
        rules.addAll(pairRules);
        return rules;
    }
}
