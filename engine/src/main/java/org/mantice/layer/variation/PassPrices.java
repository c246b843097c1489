package org.mantice.layer.variation;

import java.util.ArrayList;
import java.util.List;
import org.mantice.layer.Ledger;
import org.mantice.layer.Pricing;
import org.mantice.layer.RuleBook;
import org.mantice.plan.Explanation;
import org.mantice.player.Taste;
import org.mantice.rule.PassChoice;
import org.mantice.rule.PassPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Step;
import org.mantice.search.ConcessionScale;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Transition;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** What the rules charge for every choice and pair of choices, asked once and kept. */
final class PassPrices {
    private static final ConcessionScale SCALE = new ConcessionScale(1);
    private static final WrittenPlace START = new WrittenPlace(0, MusicalTime.ZERO);

    private final PassChoices offered;
    private final RuleBook book;
    private final List<Rule<PassChoice>> choiceRules;
    private final List<Rule<PassPair>> pairRules;
    /** Millipoints by pass, state, rule. */
    private final List<long[][]> choiceCosts = new ArrayList<>();
    /** Millipoints by pass, state before, state, rule; null where the hand has no time. The first pass has none. */
    private final List<long[][][]> pairCosts = new ArrayList<>();

    PassPrices(PassChoices offered, RuleBook book) {
        this.offered = offered;
        this.book = book;
        this.choiceRules = book.rules(RuleSet.REPEAT_VARIATION, PassChoice.class);
        this.pairRules = book.rules(RuleSet.REPEAT_VARIATION, PassPair.class);
        for (int pass = 0; pass < offered.choices().size(); pass++) price(pass);
    }

    private void price(int pass) {
        List<PassChoice> here = offered.choices().get(pass);
        List<PassChoice> before = pass == 0 ? List.of() : offered.choices().get(pass - 1);
        String place = "pass " + (pass + 1);
        choiceCosts.add(
                here.stream().map(choice -> costs(choiceRules, choice, place)).toArray(long[][]::new));
        long[][][] pairs = new long[before.size()][here.size()][];
        for (int from = 0; from < before.size(); from++)
            for (int to = 0; to < here.size(); to++)
                if (offered.canFollow(pass, from, to))
                    pairs[from][to] = costs(pairRules, new PassPair(before.get(from), here.get(to)), place);
        pairCosts.add(pairs);
    }

    private static <S extends Step> long[] costs(List<Rule<S>> rules, S step, String place) {
        return rules.stream().mapToLong(rule -> Pricing.cost(rule, step, place)).toArray();
    }

    /** The lattice under a taste; calls no rule. */
    LayeredGraph graph(Taste taste) {
        LayeredGraph.Builder graph = LayeredGraph.builder(SCALE);
        for (int pass = 0; pass < choiceCosts.size(); pass++) {
            long[][] costs = choiceCosts.get(pass);
            long[] nodes = new long[costs.length];
            long[] bans = new long[costs.length];
            for (int state = 0; state < nodes.length; state++) {
                nodes[state] = weighted(choiceRules, costs[state], taste);
                bans[state] = bans(choiceRules, costs[state], taste);
            }
            if (pass == 0) graph.first(nodes);
            else graph.next(transition(pairCosts.get(pass), nodes.length, taste), nodes);
            graph.conceding(bans);
        }
        return graph.build();
    }

    private Transition transition(long[][][] pairs, int targets, Taste taste) {
        Transition.Builder moves = Transition.builder(pairs.length, targets);
        for (int from = 0; from < pairs.length; from++)
            for (int to = 0; to < targets; to++) {
                long[] costs = pairs[from][to];
                if (costs != null)
                    moves.edge(from, to, weighted(pairRules, costs, taste), bans(pairRules, costs, taste));
            }
        return moves.build();
    }

    private static long weighted(List<? extends Rule<?>> rules, long[] costs, Taste taste) {
        long total = 0;
        for (int rule = 0; rule < costs.length; rule++)
            if (costs[rule] != Rule.BAN)
                total = Math.addExact(total, Math.multiplyExact(costs[rule], (long)
                        taste.perMille(rules.get(rule).info().id())));
        return total;
    }

    /** Bans of rules that are switched off do not count. */
    private static long bans(List<? extends Rule<?>> rules, long[] costs, Taste taste) {
        int count = 0;
        for (int rule = 0; rule < costs.length; rule++)
            if (costs[rule] == Rule.BAN && taste.perMille(rules.get(rule).info().id()) > 0) count++;
        return SCALE.pack(count);
    }

    Ledger ledger(int[] states) {
        Ledger ledger = new Ledger(book.rules(RuleSet.REPEAT_VARIATION));
        each(states, (rule, pass, cost) -> ledger.add(rule, cost, pass, START));
        return ledger;
    }

    private interface Charge {
        void take(Rule<?> rule, int pass, long cost);
    }

    private void each(int[] states, Charge charge) {
        for (int pass = 0; pass < states.length; pass++) {
            for (int rule = 0; rule < choiceRules.size(); rule++)
                charge.take(choiceRules.get(rule), pass + 1, choiceCosts.get(pass)[states[pass]][rule]);
            for (int rule = 0; pass > 0 && rule < pairRules.size(); rule++)
                charge.take(pairRules.get(rule), pass + 1, pairCosts.get(pass)[states[pass - 1]][states[pass]][rule]);
        }
    }

    Explanation explain(int[] states, Taste taste) {
        List<Explanation> rules = new ArrayList<>();
        for (Rule<PassChoice> rule : choiceRules) {
            List<Explanation> places = new ArrayList<>();
            for (int pass = 0; pass < states.length; pass++) add(places, rule, choice(pass, states), pass, taste);
            rules.add(Explanation.sumOf(rule.info().id(), places));
        }
        for (Rule<PassPair> rule : pairRules) {
            List<Explanation> places = new ArrayList<>();
            for (int pass = 1; pass < states.length; pass++)
                add(places, rule, new PassPair(choice(pass - 1, states), choice(pass, states)), pass, taste);
            rules.add(Explanation.sumOf(rule.info().id(), places));
        }
        return Explanation.sumOf(RuleSet.REPEAT_VARIATION.id(), rules);
    }

    private PassChoice choice(int pass, int[] states) {
        return offered.choices().get(pass).get(states[pass]);
    }

    private static <S extends Step> void add(List<Explanation> places, Rule<S> rule, S step, int pass, Taste taste) {
        String place = "pass " + (pass + 1);
        Reasons reasons = Pricing.reasons(rule, step, place);
        if (reasons.cost() == 0) return;
        long millipoints = reasons.cost() == Rule.BAN ? 0 : reasons.cost();
        long cost = Math.multiplyExact(
                millipoints, (long) taste.perMille(rule.info().id()));
        places.add(Explanation.leaf("place", place, cost, reasons.facts()));
    }
}
