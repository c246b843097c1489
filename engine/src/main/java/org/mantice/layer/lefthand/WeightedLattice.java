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
            long[] costs = spread(nodes.costs, stage.space());
            if (i == 0) builder.first(costs);
            else builder.next(shared.computeIfAbsent(moves(stage).id(), id -> transition(moves(stage))), costs);
            if (nodes.concessions.length > 0) builder.conceding(spread(nodes.concessions, stage.space()));
        }
        return builder.build();
    }

    private static Stage.Moves moves(Stage stage) {
        return stage.fromBefore().orElseThrow();
    }

    private static long[] spread(long[] ofWays, StateSpace space) {
        long[] ofStates = new long[space.size()];
        for (int state = 0; state < ofStates.length; state++)
            ofStates[state] = ofWays[space.ways().get(state)];
        return ofStates;
    }

    private Transition transition(Stage.Moves moves) {
        Weighted pairs = pairs(moves.table());
        Transition.Builder builder =
                Transition.builder(moves.from().size(), moves.to().size());
        for (int source = 0; source < moves.from().size(); source++)
            for (int target = 0; target < moves.to().size(); target++) {
                if (!moves.allowed(source, target)) continue;
                int pair = moves.index(source, target);
                long conceded = pairs.concessions.length == 0 ? ConcessionScale.NONE : pairs.concessions[pair];
                builder.edge(source, target, pairs.costs[pair], conceded);
            }
        return builder.build();
    }

    private Weighted moments(Stage stage) {
        return momentCosts.computeIfAbsent(
                stage.space().moments().id(),
                id -> weighted(
                        tables.momentRules,
                        stage.costs(),
                        stage.space().moments().size()));
    }

    private Weighted pairs(RuleTables.PairTable table) {
        return pairCosts.computeIfAbsent(
                table.id(),
                id -> weighted(
                        tables.pairRules,
                        table.costs(),
                        table.from().size() * table.to().size()));
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
