package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.player.Taste;
import org.mantice.rule.GiveWay;
import org.mantice.rule.Rule;
import org.mantice.search.ConcessionScale;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Transition;

/** The kept numbers under one taste, as a lattice to search; no rule is called. */
final class WeightedLattice {
    private final List<Stage> stages;
    private final RuleTables tables;
    private final Taste taste;
    private final List<GiveWay> ways;
    private final ConcessionScale scale;
    private final Map<Integer, Weighted> momentCosts = new HashMap<>();
    private final Map<Integer, Weighted> pairCosts = new HashMap<>();

    /** Micropoints and packed concessions by index. */
    private record Weighted(long[] costs, long[] concessions) {}

    /** A change of costs that goes with a stage, for plans that must differ. */
    interface Surcharge {
        /** Micropoints on top for a state. */
        long at(int stage, int state);
    }

    private WeightedLattice(List<Stage> stages, RuleTables tables, Taste taste) {
        this.stages = stages;
        this.tables = tables;
        this.taste = taste;
        this.ways = tables.waysToGive();
        this.scale = new ConcessionScale(Math.max(1, Math.min(5, ways.size())));
    }

    static LayeredGraph of(List<Stage> stages, RuleTables tables, Taste taste) {
        return new WeightedLattice(stages, tables, taste).graph((stage, state) -> 0);
    }

    static LayeredGraph of(List<Stage> stages, RuleTables tables, Taste taste, Surcharge surcharge) {
        return new WeightedLattice(stages, tables, taste).graph(surcharge);
    }

    /**
     * The same lattice with a counter in the state: state × (most + 1) + counter, which rises by one at every named
     * stage whose state differs.
     *
     * @param same by stage and state: whether the buttons are those of the plan to differ from
     */
    static LayeredGraph counting(List<Stage> stages, RuleTables tables, Taste taste, boolean[][] same, int most) {
        return new WeightedLattice(stages, tables, taste).countingGraph(same, most);
    }

    private LayeredGraph graph(Surcharge surcharge) {
        Map<Integer, Transition> shared = new HashMap<>();
        LayeredGraph.Builder builder = LayeredGraph.builder(scale);
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            Weighted nodes = moments(stage);
            long[] costs = nodes.costs.clone();
            for (int state = 0; state < costs.length; state++) costs[state] = Math.addExact(costs[state], surcharge.at(i, state));
            if (i == 0) builder.first(costs);
            else builder.next(shared.computeIfAbsent(table(stage).id(), id -> transition(table(stage))), costs);
            if (nodes.concessions.length > 0) builder.conceding(nodes.concessions);
        }
        return builder.build();
    }

    private static RuleTables.PairTable table(Stage stage) {
        return stage.fromBefore().orElseThrow();
    }

    private Transition transition(RuleTables.PairTable table) {
        Weighted pairs = pairs(table);
        int sources = table.from().size();
        int targets = table.to().size();
        int[] start = new int[sources + 1];
        int[] target = new int[sources * targets];
        for (int source = 0; source <= sources; source++) start[source] = source * targets;
        for (int edge = 0; edge < target.length; edge++) target[edge] = edge % targets;
        Transition moves = Transition.of(start, target, pairs.costs, targets);
        return pairs.concessions.length == 0 ? moves : moves.withConcessions(pairs.concessions);
    }

    private record CountedKey(int table, boolean named, String same) {}

    private LayeredGraph countingGraph(boolean[][] same, int most) {
        Map<CountedKey, Transition> shared = new HashMap<>();
        LayeredGraph.Builder builder = LayeredGraph.builder(scale);
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            Weighted nodes = moments(stage);
            long[] costs = spread(nodes.costs, most);
            boolean[] sameHere = same[i];
            if (i == 0) builder.first(costs);
            else {
                CountedKey key = new CountedKey(table(stage).id(), stage.named(), Arrays.toString(sameHere));
                builder.next(
                        shared.computeIfAbsent(key, id -> counted(table(stage), stage.named(), sameHere, most)), costs);
            }
            if (nodes.concessions.length > 0) builder.conceding(spread(nodes.concessions, most));
        }
        return builder.build();
    }

    private Transition counted(RuleTables.PairTable table, boolean named, boolean[] same, int most) {
        Weighted pairs = pairs(table);
        int targets = table.to().size();
        Transition.Builder builder = Transition.builder(table.from().size() * (most + 1), targets * (most + 1));
        for (int source = 0; source < table.from().size(); source++)
            for (int count = 0; count <= most; count++)
                for (int target = 0; target < targets; target++) {
                    int next = named && !same[target] ? Math.min(most, count + 1) : count;
                    int pair = source * targets + target;
                    long conceded = pairs.concessions.length == 0 ? ConcessionScale.NONE : pairs.concessions[pair];
                    builder.edge(
                            source * (most + 1) + count, target * (most + 1) + next, pairs.costs[pair], conceded);
                }
        return builder.build();
    }

    private static long[] spread(long[] values, int most) {
        long[] spread = new long[values.length * (most + 1)];
        for (int i = 0; i < spread.length; i++) spread[i] = values[i / (most + 1)];
        return spread;
    }

    private Weighted moments(Stage stage) {
        return momentCosts.computeIfAbsent(
                stage.space().id(), id -> weighted(tables.momentRules, stage.costs(), stage.space().size()));
    }

    private Weighted pairs(RuleTables.PairTable table) {
        return pairCosts.computeIfAbsent(
                table.id(), id -> weighted(tables.pairRules, table.costs(), table.from().size() * table.to().size()));
    }

    private Weighted weighted(List<? extends Rule<?>> rules, int[][] costs, int size) {
        long[] sums = new long[size];
        long[] concessions = new long[0];
        for (int rule = 0; rule < costs.length; rule++) {
            long weight = taste.perMille(rules.get(rule).info().id());
            if (weight == 0) continue;
            int[] ofRule = costs[rule];
            for (int i = 0; i < size; i++) {
                if (ofRule[i] != RuleTables.BAN) {
                    sums[i] = Math.addExact(sums[i], weight * ofRule[i]);
                } else {
                    if (concessions.length == 0) concessions = new long[size];
                    concessions[i] = scale.add(concessions[i], one(rules.get(rule)));
                }
            }
        }
        return new Weighted(sums, concessions);
    }

    private long one(Rule<?> rule) {
        int level = ways.indexOf(rule.info().banGivesWay().orElseThrow());
        return scale.one(Math.min(level, scale.levels() - 1));
    }
}
