package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.StradellaBass;
import org.mantice.layer.Question;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.LeftHandPlan;
import org.mantice.player.BassMethod;
import org.mantice.player.Taste;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.ButtonPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/** The search against brute force over all states, and against a general-purpose graph library. */
class LeftHandSearchTest {
    private static final List<String> CHORDS = List.of("C", "Am", "G7", "Fm6", "Dm7", "C/E", "Bdim7", "Gsus4");

    private static LeftHandScore score(Performance performance, int buttons) {
        return LeftHandScore.of(
                performance,
                LeftHands.accordion(StradellaBass.ofSize(buttons)),
                LeftHands.player(BassMethod.FOUR_THREE_TWO),
                LeftHands.RULES);
    }

    /** A sequence of states with what the rules, called anew, charge for it. */
    private record Walk(int[] states, long cost) {}

    private static List<Walk> everyWalk(LeftHandScore score, Taste taste) {
        List<Walk> walks = new ArrayList<>(List.of(new Walk(new int[0], 0)));
        for (int i = 0; i < score.stages.size(); i++) {
            Stage stage = score.stages.get(i);
            List<Walk> longer = new ArrayList<>();
            for (Walk walk : walks)
                for (int state = 0; state < stage.space().size(); state++) {
                    if (i > 0 && !stage.fromBefore().orElseThrow().allowed(walk.states[i - 1], state)) continue;
                    int[] states = Arrays.copyOf(walk.states, i + 1);
                    states[i] = state;
                    longer.add(new Walk(states, walk.cost + costOf(score, i, states, taste)));
                }
            walks = longer;
        }
        walks.sort((a, b) -> a.cost != b.cost ? Long.compare(a.cost, b.cost) : Arrays.compare(a.states, b.states));
        return walks;
    }

    private static long costOf(LeftHandScore score, int i, int[] states, Taste taste) {
        Stage stage = score.stages.get(i);
        ButtonMoment moment = stage.space().moment(states[i]);
        long cost = 0;
        for (Rule<ButtonMoment> rule : LeftHands.RULES.rules(RuleSet.JUMP_COST, ButtonMoment.class))
            cost += rule.cost(moment) * taste.perMille(rule.info().id());
        if (i == 0) return cost;
        ButtonMoment before = score.stages.get(i - 1).space().moment(states[i - 1]);
        long available = LeftHandScore.availableMillis(score.stages.get(i - 1).beat(), stage.beat());
        long needed = score.moveTime.millis(moment.handColumn() - before.handColumn());
        ButtonPair pair = new ButtonPair(
                before, moment, needed, available, StradellaBass.ofSize(120).columnsToMark(moment.handColumn()));
        for (Rule<ButtonPair> rule : LeftHands.RULES.rules(RuleSet.JUMP_COST, ButtonPair.class))
            cost += rule.cost(pair) * taste.perMille(rule.info().id());
        return cost;
    }

    @Test
    void kBestEqualBruteForceOverAllStatesTiesIncluded() {
        Random random = new Random(7);
        for (int round = 0; round < 8; round++) {
            String one = CHORDS.get(random.nextInt(8));
            String other = CHORDS.get(random.nextInt(8));
            int buttons = List.of(8, 12, 48, 72).get(random.nextInt(4));
            for (String chords : List.of(one, one + " " + other)) {
                Performance performance = LeftHands.inFour(1, chords + "|N.C.");
                Taste taste = Taste.PLAIN.with("left-hand.stretch", random.nextInt(3) * 500);
                LeftHandScore score = score(performance, buttons);
                List<Walk> walks = everyWalk(score, taste);
                PlanWriter writer = new PlanWriter(score);

                List<LeftHandPlan> plans = LeftHands.found(LeftHands.layer(performance, buttons)
                                .best(new Question(taste, List.of(), 25, () -> false)))
                        .plans();

                assertThat(plans).hasSize(Math.min(25, walks.size()));
                for (int k = 0; k < plans.size(); k++) {
                    assertThat(plans.get(k).cost(taste)).isEqualTo(walks.get(k).cost);
                    assertThat(plans.get(k)).isEqualTo(writer.plan(walks.get(k).states));
                }
            }
        }
    }

    /** One measure twice: its second chord makes other presses of the same place in the second pass. */
    @Test
    void kBestEqualBruteForceWithAnAlternateInTheSecondPass() {
        Tune tune = Tunes.melody("2/4", "\"C(Am)\" C4 h");
        Performance performance =
                Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(2).build());
        LeftHandScore score = score(performance, 24);
        List<Walk> walks = everyWalk(score, Taste.PLAIN);
        PlanWriter writer = new PlanWriter(score);

        List<LeftHandPlan> plans = LeftHands.found(
                        LeftHands.layer(performance, 24).best(new Question(Taste.PLAIN, List.of(), 10, () -> false)))
                .plans();

        assertThat(plans).hasSize(10);
        assertThat(plans.get(0).events())
                .extracting(event -> event.pass() + " " + LeftHandPlan.name(event.buttons()))
                .contains("1 C bass", "1 C major", "2 A bass", "2 A minor");
        for (int k = 0; k < plans.size(); k++) {
            assertThat(plans.get(k).cost(Taste.PLAIN)).isEqualTo(walks.get(k).cost);
            assertThat(plans.get(k)).isEqualTo(writer.plan(walks.get(k).states));
        }
    }

    @Test
    void bestCostEqualsDijkstrasOnAWholeTune() {
        for (int buttons : List.of(48, 120)) {
            Performance tune = LeftHands.inFour(2, "C|Am|Dm7|G7|C|F Fm6|C/E A7|Dm7 G7|Bdim7|Gsus4 G7|C");
            LeftHandScore score = score(tune, buttons);
            var graph = new SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
            graph.addVertex(-1);
            graph.addVertex(-2);
            int base = 0;
            for (int i = 0; i < score.stages.size(); i++) {
                int size = score.stages.get(i).space().size();
                int before = i == 0 ? 0 : score.stages.get(i - 1).space().size();
                for (int state = 0; state < size; state++) {
                    graph.addVertex(base + state);
                    if (i == 0) edge(graph, -1, state, costOf(score, 0, new int[] {state}, Taste.PLAIN));
                    for (int source = 0; source < before; source++) {
                        if (!score.stages.get(i).fromBefore().orElseThrow().allowed(source, state)) continue;
                        int[] states = new int[i + 1];
                        states[i - 1] = source;
                        states[i] = state;
                        edge(graph, base - before + source, base + state, costOf(score, i, states, Taste.PLAIN));
                    }
                    if (i == score.stages.size() - 1) edge(graph, base + state, -2, 0);
                }
                base += size;
            }

            double theirs = new DijkstraShortestPath<>(graph).getPathWeight(-1, -2);

            assertThat(LeftHands.best(LeftHands.layer(tune, buttons)).cost(Taste.PLAIN))
                    .isEqualTo((long) theirs);
        }
    }

    private static void edge(
            SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph, int from, int to, long cost) {
        graph.setEdgeWeight(graph.addEdge(from, to), cost);
    }
}
