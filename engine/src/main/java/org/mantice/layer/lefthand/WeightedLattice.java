package org.mantice.layer.lefthand;

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

    private WeightedLattice(List<Stage> stages, RuleTables tables, Taste taste) {
        this.stages = stages;
        this.tables = tables;
        this.taste = taste;
        this.ways = tables.waysToGive();
        this.scale = new ConcessionScale(Math.max(1, Math.min(5, ways.size())));
    }

    static LayeredGraph of(List<Stage> stages, RuleTables tables, Taste taste) {
        return new WeightedLattice(stages, tables, taste).graph();
    }

    private LayeredGraph graph() {
        Map<Integer, Transition> shared = new HashMap<>();
        LayeredGraph.Builder builder = LayeredGraph.builder(scale);
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            Weighted nodes = moments(stage);
            if (i == 0) builder.first(nodes.costs);
            else builder.next(shared.computeIfAbsent(table(stage).id(), id -> transition(table(stage))), nodes.costs);
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
