package org.mantice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.mantice.layer.Choice;
import org.mantice.layer.Layer;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Explanation;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.Sentence;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;
import org.mantice.tune.WrittenPlace;

/**
 * One request being worked on: the tune as played and the layers with their kept numbers. A change of weights or locks
 * is a new question, not a new planning. Not for concurrent use by several threads.
 */
public final class Planning {
    /** How many sets of registers are tried before a tune is called unplayable. */
    private static final int REGISTERS_TRIED = 8;

    /** Obstacles that a lighter register may remove. */
    private static final Set<String> OUT_OF_AIR = Set.of("stretch-without-turn", "no-strokes-fit");

    private final PlanRequest request;
    private final RuleBook book;
    private final Performance performance;
    private final PlanningLayers layers;

    Planning(PlanRequest request, RuleBook book) {
        this.request = request;
        this.book = book;
        this.performance = Performer.perform(request.tune(), request.settings());
        this.layers = new PlanningLayers(performance, request.accordion(), request.player(), book);
    }

    public PlanRequest request() {
        return request;
    }

    public RuleBook rules() {
        return book;
    }

    /** The tune as played, transposed as asked. */
    public Performance performance() {
        return performance;
    }

    /** The best plan alone. */
    public Alternatives best(Taste taste, List<Lock> locks) {
        return alternatives(taste, locks, 1, plan -> {}, () -> false);
    }

    /**
     * The best plan and its alternatives under weights and locks that may differ from the request's.
     *
     * @param count how many plans at most, 1 or more
     * @param found takes the plan whose layers are each the best first, then each alternative as soon as it is known
     */
    public Alternatives alternatives(
            Taste taste, List<Lock> locks, int count, Consumer<Plan> found, BooleanSupplier cancelled) {
        Question question = new Question(taste, locks, REGISTERS_TRIED, cancelled);
        Outcome<VariationPlan> registers = layers.variation().best(question);
        if (registers instanceof Outcome.Impossible<VariationPlan> impossible)
            return new Alternatives.NotPlayable(impossible.obstacles());
        List<Obstacle> obstacles = new ArrayList<>();
        boolean first = true;
        for (VariationPlan variation : ((Outcome.Found<VariationPlan>) registers).plans()) {
            List<Obstacle> here = new ArrayList<>();
            Optional<Plan> best =
                    complete(first ? "best" : "best that can be played", variation, single(question), here);
            if (best.isPresent()) {
                found.accept(best.get());
                return new AlternativeSearch(this, single(question), best.get(), found).upTo(count);
            }
            if (first) obstacles.addAll(here);
            first = false;
            if (here.stream().noneMatch(obstacle -> OUT_OF_AIR.contains(obstacle.code()))) break;
        }
        return new Alternatives.NotPlayable(obstacles);
    }

    private static Question single(Question question) {
        return new Question(question.taste(), question.locks(), 1, question.cancelled());
    }

    /** The best of the later layers for given registers; empty, with obstacles added, if one of them has no plan. */
    Optional<Plan> complete(String label, VariationPlan variation, Question question, List<Obstacle> obstacles) {
        return bestOf(layers.leftHand(variation), question, obstacles)
                .flatMap(left -> complete(label, variation, left, question, obstacles));
    }

    /**
     * The best bellows and right hand for given registers and buttons. The bellows come first, because their search
     * needs much memory for a moment and the right hand's tables keep much.
     */
    Optional<Plan> complete(
            String label,
            VariationPlan variation,
            Outcome.Found<LeftHandPlan> left,
            Question question,
            List<Obstacle> obstacles) {
        Optional<Outcome.Found<BellowsPlan>> bellows =
                bestOf(layers.bellows(variation, left.best()), question, obstacles);
        Optional<Outcome.Found<RightHandPlan>> right = bestOf(layers.rightHand(variation), question, obstacles);
        if (bellows.isEmpty() || right.isEmpty()) return Optional.empty();
        return Optional.of(new Plan(
                label,
                left.proven() && bellows.get().proven() && right.get().proven(),
                variation,
                left.best(),
                bellows.get().best(),
                right.get().best()));
    }

    private static <P extends LayerPlan> Optional<Outcome.Found<P>> bestOf(
            Layer<P> layer, Question question, List<Obstacle> obstacles) {
        Outcome<P> outcome = layer.best(question);
        if (outcome instanceof Outcome.Found<P> plans) return Optional.of(plans);
        obstacles.addAll(((Outcome.Impossible<P>) outcome).obstacles());
        return Optional.empty();
    }

    /**
     * The plan under other weights or locks, with the layer searched again that they touch first: the layers before it
     * stay as they are in the plan, and those that rest on it are searched again where it comes out otherwise. The
     * bellows rest on registers and left hand, the right hand on octaves alone. Quicker than a whole search, and the
     * best plan only where the layers that stay are still the best.
     *
     * @param plan of this planning
     * @param touched the layer to begin with
     * @return empty if a layer that is searched again cannot be played
     */
    public Optional<Plan> retouch(
            Plan plan, RuleSet touched, Taste taste, List<Lock> locks, BooleanSupplier cancelled) {
        return new Retouch(layers, plan, new Question(taste, locks, 1, cancelled)).from(touched);
    }

    PlanningLayers layers() {
        return layers;
    }

    /** The tree plan → layer → rule → place → facts; its cost is the plan's under the taste. */
    public Explanation explain(Plan plan, Taste taste) {
        return Explanation.sumOf(
                "plan",
                List.of(
                        layers.variation().explain(plan.variation(), taste),
                        layers.leftHand(plan.variation()).explain(plan.leftHand(), taste),
                        layers.bellows(plan.variation(), plan.leftHand()).explain(plan.bellows(), taste),
                        layers.rightHand(plan.variation()).explain(plan.rightHand(), taste)));
    }

    /** What the plan leaves out of what is written, in plain sentences; mostly empty. */
    public List<Sentence> remarks(Plan plan) {
        return layers.leftHand(plan.variation()).remarks();
    }

    /**
     * The plan's decisions priced anew by the rules.
     *
     * @throws IllegalArgumentException if the decisions do not fit the tune or the instrument
     */
    public Plan rescore(Plan plan) {
        VariationPlan variation = layers.variation().rescore(plan.variation());
        LeftHandPlan left = layers.leftHand(variation).rescore(plan.leftHand());
        BellowsPlan bellows = layers.bellows(variation, left).rescore(plan.bellows());
        RightHandPlan right = layers.rightHand(variation).rescore(plan.rightHand());
        return new Plan(plan.label(), plan.provenBest(), variation, left, bellows, right);
    }

    /**
     * What would spare the plan the bans that gave way at the bellows, each tried in earnest; empty if none did.
     */
    public List<Sentence> remedies(Plan plan, Taste taste, List<Lock> locks) {
        return new Remedies(this, plan, taste, locks).sentences();
    }

    /** What else was possible at a place in a pass, given the plan's earlier layers; best first. */
    public List<Choice> choicesAt(
            Plan plan, RuleSet layer, Taste taste, List<Lock> locks, int pass, WrittenPlace place) {
        return choicesAt(plan, layer, new Question(taste, locks, 1, () -> false), pass, place);
    }

    /** The same for a question that may be cancelled. */
    public List<Choice> choicesAt(Plan plan, RuleSet layer, Question question, int pass, WrittenPlace place) {
        return switch (layer) {
            case REPEAT_VARIATION -> layers.variation().choicesAt(question, pass, place);
            case JUMP_COST -> layers.leftHand(plan.variation()).choicesAt(question, pass, place);
            case BELLOWS_POLICY ->
                layers.bellows(plan.variation(), plan.leftHand()).choicesAt(question, pass, place);
            case FINGERING_SPAN -> layers.rightHand(plan.variation()).choicesAt(question, pass, place);
        };
    }
}
