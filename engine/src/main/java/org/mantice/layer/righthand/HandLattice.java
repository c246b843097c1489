package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.mantice.layer.GiveWayLevels;
import org.mantice.layer.RuleBook;
import org.mantice.layer.Tables;
import org.mantice.layer.WeightedSums;
import org.mantice.player.Taste;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.FingerPair;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Path;
import org.mantice.search.Transition;

/**
 * The lattice of a piece: stage 0 has the postures of the first moment, every later stage the pairs of postures of the
 * moment before and its own, so that rules may look at three moments. The rules are called once for each distinct
 * context; what they said is kept and recombined for any taste.
 *
 * <p>Time and memory grow with the number of distinct contexts; a new taste costs one pass over these, and one over
 * all moments in the search.
 */
final class HandLattice {
    private final List<Rule<FingerMoment>> momentRules;
    private final List<Rule<FingerPair>> pairRules;
    private final List<Rule<FingerTriple>> tripleRules;
    private final GiveWayLevels levels;
    /** By moment. */
    private final List<MomentTable> moments = new ArrayList<>();
    /** By moment, from the second on. */
    private final List<PairTable> pairs = new ArrayList<>();
    /** By moment, from the second on: the moves that lead to it. */
    private final List<TripleTable> moves = new ArrayList<>();

    HandLattice(HandMusic music, int handSpanTenths, RuleBook book) {
        this.momentRules = book.rules(RuleSet.FINGERING_SPAN, FingerMoment.class);
        this.pairRules = book.rules(RuleSet.FINGERING_SPAN, FingerPair.class);
        this.tripleRules = book.rules(RuleSet.FINGERING_SPAN, FingerTriple.class);
        this.levels = new GiveWayLevels(book.rules(RuleSet.FINGERING_SPAN));
        new Builder(music, handSpanTenths).build();
    }

    /** Makes the tables; forgets the steps afterwards. */
    private final class Builder {
        private final HandMusic music;
        private final int handSpanTenths;
        private final Map<Moment, MomentTable> momentTables = new HashMap<>();
        private final Map<Junction, PairTable> pairTables = new HashMap<>();
        private final IdentityHashMap<PairTable, List<FingerPair>> steps = new IdentityHashMap<>();
        private final IdentityHashMap<PairTable, IdentityHashMap<PairTable, TripleTable>> tripleTables =
                new IdentityHashMap<>();
        private final IdentityHashMap<PairTable, TripleTable> firstTables = new IdentityHashMap<>();

        Builder(HandMusic music, int handSpanTenths) {
            this.music = music;
            this.handSpanTenths = handSpanTenths;
        }

        void build() {
            for (int index = 0; index < music.size(); index++) {
                int at = index;
                moments.add(momentTables.computeIfAbsent(
                        music.moment(index),
                        moment -> new MomentTable(moment, handSpanTenths, momentRules, music.words(at))));
                if (index > 0) addPairs(index);
            }
        }

        private void addPairs(int index) {
            Junction junction = music.junctionAfter(index - 1);
            PairTable table = pairTables.get(junction);
            if (table == null) {
                List<FingerPair> made = new ArrayList<>();
                table = PairTable.of(
                        junction, moments.get(index - 1), moments.get(index), pairRules, made, music.words(index));
                pairTables.put(junction, table);
                steps.put(table, List.copyOf(made));
            }
            moves.add(index == 1 ? firstTables.computeIfAbsent(table, TripleTable::first) : triples(index, table));
            pairs.add(table);
        }

        private TripleTable triples(int index, PairTable second) {
            PairTable first = pairs.get(index - 2);
            return tripleTables
                    .computeIfAbsent(first, before -> new IdentityHashMap<>())
                    .computeIfAbsent(
                            second,
                            after -> TripleTable.of(
                                    first, steps(first), after, steps(after), tripleRules, music.words(index)));
        }

        private List<FingerPair> steps(PairTable table) {
            return Objects.requireNonNull(steps.get(table), "steps of a table that was made");
        }
    }

    int stages() {
        return moments.size();
    }

    int states(int stage) {
        return stage == 0
                ? moments.get(0).postures.size()
                : pairs.get(stage - 1).pairs();
    }

    /** The posture of a stage's own moment in a state. */
    int postureIndex(int stage, int state) {
        return stage == 0 ? state : pairs.get(stage - 1).target[state];
    }

    Posture posture(int stage, int state) {
        return moments.get(stage).postures.get(postureIndex(stage, state));
    }

    /** The posture of the moment before in a state of a later stage than the first. */
    int postureBefore(int stage, int state) {
        return pairs.get(stage - 1).source(state);
    }

    List<Posture> postures(int stage) {
        return moments.get(stage).postures;
    }

    /** What a rule charged for the step that ends at a stage. */
    interface Charge {
        void take(Rule<?> rule, int stage, long cost);
    }

    /** What every rule charges along a path, from the kept numbers: rule by rule in order of reach, stage by stage. */
    void charges(Path path, Charge charge) {
        for (int rule = 0; rule < momentRules.size(); rule++)
            for (int stage = 0; stage < stages(); stage++)
                take(
                        charge,
                        momentRules.get(rule),
                        stage,
                        moments.get(stage).costs[rule][postureIndex(stage, path.state(stage))]);
        for (int rule = 0; rule < pairRules.size(); rule++)
            for (int stage = 1; stage < stages(); stage++)
                take(charge, pairRules.get(rule), stage, pairs.get(stage - 1).costs[rule][path.state(stage)]);
        for (int rule = 0; rule < tripleRules.size(); rule++)
            for (int stage = 2; stage < stages(); stage++) {
                TripleTable table = moves.get(stage - 1);
                int edge = table.shape.edge(path.state(stage - 1), path.state(stage));
                take(
                        charge,
                        tripleRules.get(rule),
                        stage,
                        table.charges.get(rule).at(edge));
            }
    }

    private static void take(Charge charge, Rule<?> rule, int stage, int stored) {
        if (stored != 0) charge.take(rule, stage, Tables.cost(stored));
    }

    /** The lattice under a taste; calls no rule. */
    LayeredGraph graph(Taste taste) {
        Weighing weighing = new Weighing(taste);
        LayeredGraph.Builder graph = LayeredGraph.builder(levels.scale());
        for (int stage = 0; stage < stages(); stage++) {
            WeightedSums nodes = stage == 0 ? weighing.nodes(moments.get(0)) : weighing.nodes(pairs.get(stage - 1));
            if (stage == 0) graph.first(nodes.costs());
            else graph.next(weighing.moves(moves.get(stage - 1)), nodes.costs());
            if (nodes.concedes()) graph.conceding(nodes.concessions());
        }
        return graph.build();
    }

    /** Weighted sums, made once for each table. */
    private final class Weighing {
        private final Taste taste;
        private final IdentityHashMap<MomentTable, WeightedSums> ofMoments = new IdentityHashMap<>();
        private final IdentityHashMap<PairTable, WeightedSums> ofPairs = new IdentityHashMap<>();
        private final IdentityHashMap<TripleTable, Transition> transitions = new IdentityHashMap<>();

        Weighing(Taste taste) {
            this.taste = taste;
        }

        WeightedSums nodes(MomentTable table) {
            return ofMoments.computeIfAbsent(
                    table, key -> WeightedSums.of(momentRules, table.costs, table.postures.size(), taste, levels));
        }

        WeightedSums nodes(PairTable table) {
            return ofPairs.computeIfAbsent(
                    table, key -> WeightedSums.of(pairRules, table.costs, table.pairs(), taste, levels)
                            .plus(nodes(table.to), table.target, levels.scale()));
        }

        Transition moves(TripleTable table) {
            return transitions.computeIfAbsent(table, this::weigh);
        }

        private Transition weigh(TripleTable table) {
            long[] costs = new long[table.shape.edges()];
            long[] concessions = new long[costs.length];
            boolean charged = false;
            boolean concedes = false;
            for (int rule = 0; rule < table.charges.size(); rule++) {
                TripleTable.Charges charges = table.charges.get(rule);
                long weight = taste.perMille(tripleRules.get(rule).info().id());
                if (weight == 0) continue;
                for (int at = 0; at < charges.edges().length; at++) {
                    int edge = charges.edges()[at];
                    charged = true;
                    if (charges.costs()[at] == Tables.BANNED) {
                        concessions[edge] = levels.scale().add(concessions[edge], levels.one(tripleRules.get(rule)));
                        concedes = true;
                    } else costs[edge] = Math.addExact(costs[edge], weight * charges.costs()[at]);
                }
            }
            Transition weighted = charged ? table.shape.withCosts(costs) : table.shape;
            return concedes ? weighted.withConcessions(concessions) : weighted;
        }
    }
}
