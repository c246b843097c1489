package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.BassButton;
import org.mantice.layer.Choice;
import org.mantice.layer.GraphByTaste;
import org.mantice.layer.Layer;
import org.mantice.layer.Ledger;
import org.mantice.layer.Outcome;
import org.mantice.layer.Pricing;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.plan.Decision;
import org.mantice.plan.Explanation;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.ButtonPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;
import org.mantice.search.BestThrough;
import org.mantice.search.DifferentPath;
import org.mantice.search.LayeredGraph;
import org.mantice.search.Path;
import org.mantice.search.PathDifference;
import org.mantice.search.Score;
import org.mantice.search.ShortestPaths;
import org.mantice.tune.WrittenPlace;

/**
 * The left hand's layer. A stage is a press of the left hand, a state its buttons, fingers and hand place; every move
 * of the hand is possible and has its price, but a chord keeps its buttons as long as it lasts within a measure.
 *
 * <p>Time and memory: O(beats × states²) for the best plan, tables only once for each distinct pair of wishes and time
 * between. Immutable but for the lattice of the last taste, which is kept; safe for several threads.
 */
public final class LeftHandLayer implements Layer<LeftHandPlan> {
    /** Micropoints above the best within which different plans are looked for first; only speed depends on it. */
    private static final long NEAR = 5_000_000;

    private final LeftHandScore score;
    private final PlanWriter writer;
    private final GraphByTaste lattices;

    private LeftHandLayer(LeftHandScore score) {
        this.score = score;
        this.writer = new PlanWriter(score);
        this.lattices = new GraphByTaste(taste -> score.stages.isEmpty()
                ? LayeredGraph.builder().first(0).build()
                : WeightedLattice.of(score.stages, score.tables, taste));
    }

    /**
     * Calls the rules; every question but {@link #explain} and {@link #rescore} is then answered without.
     *
     * @param variation what is decided about the passes; the left hand plays the same in every register
     * @throws org.mantice.layer.RuleFailureException if a rule misbehaves
     */
    public static LeftHandLayer of(
            Performance performance, VariationPlan variation, Accordion accordion, Player player, RuleBook book) {
        return new LeftHandLayer(LeftHandScore.of(performance, accordion, player, book));
    }

    /** Why the left hand is silent, altogether or at a place, in plain sentences; mostly empty. */
    public List<Sentence> remarks() {
        return score.remarks;
    }

    @Override
    public RuleSet ruleSet() {
        return RuleSet.JUMP_COST;
    }

    private boolean empty() {
        return score.stages.isEmpty();
    }

    private Outcome<LeftHandPlan> silent() {
        return new Outcome.Found<>(List.of(writer.plan(new int[0])), true);
    }

    @Override
    public Outcome<LeftHandPlan> best(Question question) {
        LeftHandLocks locks = new LeftHandLocks(score, lattices.of(question.taste()), question.locks());
        Optional<Obstacle> contradiction = locks.contradiction();
        if (contradiction.isPresent()) return new Outcome.Impossible<>(List.of(contradiction.get()));
        if (empty()) return silent();
        List<Path> paths = paths(question, locks).best(question.count());
        return new Outcome.Found<>(
                paths.stream().map(path -> writer.plan(path.toArray())).toList(), true);
    }

    private ShortestPaths paths(Question question, LeftHandLocks locks) {
        return ShortestPaths.of(lattices.of(question.taste()), locks.restriction(), question.cancelled());
    }

    /** Counted are the buttons of every bass and of the first chord of each span. */
    @Override
    public Outcome<LeftHandPlan> apart(Question question, List<LeftHandPlan> from, int decisions) {
        if (from.isEmpty()) throw new IllegalArgumentException("from is empty; allowed: one plan or more");
        if (decisions < 1 || decisions > 8)
            throw new IllegalArgumentException("decisions is " + decisions + "; allowed: 1 to 8");
        LeftHandLocks locks = new LeftHandLocks(score, lattices.of(question.taste()), question.locks());
        Optional<Obstacle> contradiction = locks.contradiction();
        if (contradiction.isPresent()) return new Outcome.Impossible<>(List.of(contradiction.get()));
        if (empty()) return tooFew(decisions);
        List<DifferentPath.Requirement> requirements = from.stream()
                .map(plan -> new DifferentPath.Requirement(differenceFrom(writer.states(plan)), decisions))
                .toList();
        ShortestPaths paths = paths(question, locks);
        long best = paths.best().orElseThrow().cost();
        long near = Math.min(LayeredGraph.LARGEST_TOTAL, best + Math.max(best / 4, NEAR));
        DifferentPath.Answer answer = DifferentPath.best(paths, requirements, near, question.cancelled());
        if (answer.path().isEmpty())
            answer = DifferentPath.best(paths, requirements, LayeredGraph.LARGEST_TOTAL, question.cancelled());
        if (answer.path().isEmpty()) return tooFew(decisions);
        return new Outcome.Found<>(List.of(writer.plan(answer.path().get().toArray())), answer.proven());
    }

    private PathDifference differenceFrom(int[] reference) {
        return (stage, state) -> {
            Stage at = score.stages.get(stage);
            if (!at.named()) return 0;
            StateSpace space = at.space();
            return space.moment(state)
                            .buttons()
                            .equals(space.moment(reference[stage]).buttons())
                    ? 0
                    : 1;
        };
    }

    private static Outcome<LeftHandPlan> tooFew(int decisions) {
        return new Outcome.Impossible<>(List.of(new Obstacle(
                "no-plan-so-different",
                Sentence.of(
                        "no-plan-so-different",
                        "No left-hand plan differs in {0}.",
                        decisions == 1 ? "1 decision" : decisions + " decisions"),
                List.of(Sentence.of("ask-for-fewer-differences", "Ask for fewer differences.")))));
    }

    @Override
    public Explanation explain(LeftHandPlan plan, Taste taste) {
        return LeftHandExplanation.of(score, writer.states(plan), taste);
    }

    @Override
    public LeftHandPlan rescore(LeftHandPlan plan) {
        int[] states = writer.states(plan);
        Ledger ledger = new Ledger(score.tables.rules());
        for (int i = 0; i < states.length; i++) {
            Stage stage = score.stages.get(i);
            ButtonMoment moment = stage.space().moment(states[i]);
            for (Rule<ButtonMoment> rule : score.tables.momentRules)
                ledger.add(
                        rule,
                        Pricing.cost(rule, moment, stage.where()),
                        stage.beat().pass(),
                        stage.beat().place());
            if (i == 0) continue;
            ButtonMoment before = score.stages.get(i - 1).space().moment(states[i - 1]);
            ButtonPair pair = score.tables.pair(
                    before, moment, stage.fromBefore().orElseThrow().table().availableMillis());
            for (Rule<ButtonPair> rule : score.tables.pairRules)
                ledger.add(
                        rule,
                        Pricing.cost(rule, pair, stage.where()),
                        stage.beat().pass(),
                        stage.beat().place());
        }
        return new LeftHandPlan(writer.plan(states).events(), ledger.costs(), ledger.concessions());
    }

    /**
     * The sets of buttons at a press; empty where the left hand does not press at that place in that pass. Where it does
     * so several times, each set is meant for every time.
     */
    @Override
    public List<Choice> choicesAt(Question question, int pass, WrittenPlace place) {
        LeftHandLocks locks = new LeftHandLocks(score, lattices.of(question.taste()), question.locks());
        List<Choice> choices = new ArrayList<>();
        if (empty() || locks.contradiction().isPresent()) return choices;
        List<Integer> stages = score.at(place).stream()
                .filter(stage -> score.stages.get(stage).beat().pass() == pass)
                .toList();
        if (stages.isEmpty()) return choices;
        ShortestPaths paths = paths(question, locks);
        long best = paths.best().orElseThrow().cost();
        Map<List<BassButton>, Long> cheapest =
                stages.size() == 1 ? cheapest(question, paths, stages.get(0)) : cheapest(question, pass, place, stages);
        cheapest.forEach((buttons, cost) -> choices.add(new Choice(
                new Decision(Decision.Kind.BUTTONS, pass, place, 0, LeftHandPlan.name(buttons)),
                Math.subtractExact(cost, best))));
        choices.sort(Comparator.comparingLong(Choice::extraCost));
        return List.copyOf(choices);
    }

    private Map<List<BassButton>, Long> cheapest(Question question, ShortestPaths paths, int stage) {
        BestThrough through = BestThrough.of(paths, question.cancelled());
        StateSpace space = score.stages.get(stage).space();
        Map<List<BassButton>, Long> cheapest = new LinkedHashMap<>();
        for (int state = 0; state < space.size(); state++) {
            Optional<Score> cost = through.state(stage, state);
            if (cost.isPresent())
                cheapest.merge(space.moment(state).buttons(), cost.get().cost(), Math::min);
        }
        return cheapest;
    }

    /** One search for each set of buttons: what is cheapest at each press alone need not be so together. */
    private Map<List<BassButton>, Long> cheapest(
            Question question, int pass, WrittenPlace place, List<Integer> stages) {
        Map<List<BassButton>, Long> cheapest = new LinkedHashMap<>();
        StateSpace space = score.stages.get(stages.get(0)).space();
        for (int state = 0; state < space.size(); state++) {
            List<BassButton> buttons = space.moment(state).buttons();
            if (cheapest.containsKey(buttons)) continue;
            List<Lock> locks = new ArrayList<>(question.locks());
            locks.add(new Lock.Buttons(OptionalInt.of(pass), place, Set.copyOf(buttons)));
            paths(question, new LeftHandLocks(score, lattices.of(question.taste()), locks))
                    .best()
                    .ifPresent(path -> cheapest.put(buttons, path.cost()));
        }
        return cheapest;
    }

    @Override
    public String toString() {
        return "LeftHandLayer[" + score.stages.size() + " beats, " + score.tables.pairTables() + " tables]";
    }
}
