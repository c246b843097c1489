package org.mantice.layer.lefthand;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.layer.GiveWayLevels;
import org.mantice.layer.WeightedSums;
import org.mantice.player.Taste;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Transition;

/** The kept numbers under one taste, as a lattice to search; no rule is called. */
final class WeightedLattice {
    private final List<Stage> stages;
    private final RuleTables tables;
    private final Taste taste;
    private final GiveWayLevels levels;
    private final Map<Integer, WeightedSums> momentCosts = new HashMap<>();
    private final Map<Integer, WeightedSums> pairCosts = new HashMap<>();

    private WeightedLattice(List<Stage> stages, RuleTables tables, Taste taste) {
        this.stages = stages;
        this.tables = tables;
        this.taste = taste;
        this.levels = new GiveWayLevels(tables.rules());
    }

    static LayeredGraph of(List<Stage> stages, RuleTables tables, Taste taste) {
        return new WeightedLattice(stages, tables, taste).graph();
    }

    private LayeredGraph graph() {
        Map<Integer, Transition> shared = new HashMap<>();
        LayeredGraph.Builder builder = LayeredGraph.builder(levels.scale());
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            WeightedSums nodes = moments(stage).spread(stage.space().ways());
            if (i == 0) builder.first(nodes.costs());
            else builder.next(shared.computeIfAbsent(moves(stage).id(), id -> transition(moves(stage))), nodes.costs());
            if (nodes.concedes()) builder.conceding(nodes.concessions());
        }
        return builder.build();
    }

    private static Stage.Moves moves(Stage stage) {
        return stage.fromBefore().orElseThrow();
    }

    private Transition transition(Stage.Moves moves) {
        WeightedSums pairs = pairs(moves.table());
        Transition.Builder builder =
                Transition.builder(moves.from().size(), moves.to().size());
        for (int source = 0; source < moves.from().size(); source++)
            for (int target = 0; target < moves.to().size(); target++) {
                if (!moves.allowed(source, target)) continue;
                int pair = moves.index(source, target);
                builder.edge(source, target, pairs.costs()[pair], pairs.concession(pair));
            }
        return builder.build();
    }

    private WeightedSums moments(Stage stage) {
        return momentCosts.computeIfAbsent(
                stage.space().moments().id(),
                id -> WeightedSums.of(
                        tables.momentRules,
                        stage.costs(),
                        stage.space().moments().size(),
                        taste,
                        levels));
    }

    private WeightedSums pairs(RuleTables.PairTable table) {
        return pairCosts.computeIfAbsent(
                table.id(),
                id -> WeightedSums.of(
                        tables.pairRules,
                        table.costs(),
                        table.from().size() * table.to().size(),
                        taste,
                        levels));
    }
}
