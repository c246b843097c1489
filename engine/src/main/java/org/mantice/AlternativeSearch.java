package org.mantice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.mantice.layer.Layer;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Taste;
import org.mantice.rule.Leaning;
import org.mantice.rule.RuleSet;

/**
 * Finds plans worth comparing with the best one: first, layer by layer, the best plan that differs from it in enough
 * named decisions; then the optimum under each leaning. A plan is kept if it differs enough, in some layer, from every
 * plan kept before, and is not too dear under the player's own weights.
 */
final class AlternativeSearch {
    /** A plan may be dearer than the best by a tenth of its cost, or by this much, in micropoints: estimate. */
    private static final long ALLOWANCE = 4_000_000;

    private static final int MOST_DECISIONS = 8;

    private final Planning planning;
    private final Question question;
    private final Plan best;
    private final Consumer<Plan> found;
    private final List<Plan> kept = new ArrayList<>();
    private final long limit;

    AlternativeSearch(Planning planning, Question question, Plan best, Consumer<Plan> found) {
        this.planning = planning;
        this.question = question;
        this.best = best;
        this.found = found;
        long optimum = best.cost(question.taste());
        this.limit = Math.addExact(optimum, Math.max(optimum / 10, ALLOWANCE));
        kept.add(best);
    }

    Alternatives upTo(int count) {
        for (Supplier<Optional<Plan>> candidate : candidates()) {
            if (kept.size() >= count) break;
            candidate.get().filter(this::isWorthKeeping).ifPresent(plan -> {
                kept.add(plan);
                found.accept(plan);
            });
        }
        return new Alternatives.Found(inOrder(), count);
    }

    /**
     * By cost. Layers are planned one after the other, so a plan that gives way in an early layer may be cheaper as a
     * whole: then that one is called the best, though not proven, and the first one by what it is.
     */
    private List<Plan> inOrder() {
        List<Plan> plans = new ArrayList<>(kept);
        plans.sort(Comparator.comparingLong(plan -> plan.cost(question.taste())));
        Plan cheapest = plans.get(0);
        if (cheapest == best) return plans;
        plans.set(plans.indexOf(best), best.labelled(best.label() + " layer by layer", best.provenBest()));
        plans.set(0, cheapest.labelled(best.label(), false));
        return plans;
    }

    /** In an order that brings every layer to word before any comes twice. */
    private List<Supplier<Optional<Plan>>> candidates() {
        List<Supplier<Optional<Plan>>> candidates = new ArrayList<>();
        candidates.add(() -> bellows("other turns", apart(bellowsLayer(), best.bellows(), distance(best.bellows()))));
        candidates.add(
                () -> rightHand("other fingers", apart(rightLayer(), best.rightHand(), distance(best.rightHand()))));
        candidates.add(() -> leftHand("other buttons", apart(leftLayer(), best.leftHand(), distance(best.leftHand()))));
        candidates.add(
                () -> variation("other registers", apart(planning.layers().variation(), best.variation(), 1)));
        List<RuleSet> order =
                List.of(RuleSet.BELLOWS_POLICY, RuleSet.FINGERING_SPAN, RuleSet.JUMP_COST, RuleSet.REPEAT_VARIATION);
        int most = order.stream().mapToInt(set -> leanings(set).size()).max().orElse(0);
        for (int round = 0; round < most; round++)
            for (RuleSet set : order)
                if (round < leanings(set).size()) {
                    Leaning leaning = leanings(set).get(round);
                    candidates.add(() -> leaning(leaning));
                }
        return candidates;
    }

    private List<Leaning> leanings(RuleSet set) {
        return planning.rules().leanings(set);
    }

    private Optional<Plan> leaning(Leaning leaning) {
        Taste taste = question.taste();
        for (Map.Entry<String, Integer> weight : leaning.weights().entrySet())
            taste = taste.with(weight.getKey(), weight.getValue());
        Question leant = new Question(taste, question.locks(), 1, question.cancelled());
        return switch (leaning.ruleSet()) {
            case BELLOWS_POLICY -> bellows(leaning.id(), bellowsLayer().best(leant));
            case FINGERING_SPAN -> rightHand(leaning.id(), rightLayer().best(leant));
            case JUMP_COST -> leftHand(leaning.id(), leftLayer().best(leant));
            case REPEAT_VARIATION ->
                variation(leaning.id(), planning.layers().variation().best(leant));
        };
    }

    private Layer<BellowsPlan> bellowsLayer() {
        return planning.layers().bellows(best.variation(), best.leftHand());
    }

    private Layer<RightHandPlan> rightLayer() {
        return planning.layers().rightHand(best.variation());
    }

    private Layer<LeftHandPlan> leftLayer() {
        return planning.layers().leftHand(best.variation());
    }

    private <P extends LayerPlan> Outcome<P> apart(Layer<P> layer, P from, int decisions) {
        return layer.apart(question, List.of(from), decisions);
    }

    private Optional<Plan> bellows(String label, Outcome<BellowsPlan> outcome) {
        return plans(outcome)
                .map(plans -> new Plan(
                        label, plans.proven(), best.variation(), best.leftHand(), plans.best(), best.rightHand()));
    }

    private Optional<Plan> rightHand(String label, Outcome<RightHandPlan> outcome) {
        return plans(outcome)
                .map(plans -> new Plan(
                        label, plans.proven(), best.variation(), best.leftHand(), best.bellows(), plans.best()));
    }

    private Optional<Plan> leftHand(String label, Outcome<LeftHandPlan> outcome) {
        return plans(outcome)
                .flatMap(plans -> planning.complete(label, best.variation(), plans, question, new ArrayList<>()));
    }

    private Optional<Plan> variation(String label, Outcome<VariationPlan> outcome) {
        return plans(outcome).flatMap(plans -> planning.complete(label, plans.best(), question, new ArrayList<>()));
    }

    private static <P extends LayerPlan> Optional<Outcome.Found<P>> plans(Outcome<P> outcome) {
        return outcome instanceof Outcome.Found<P> plans ? Optional.of(plans) : Optional.empty();
    }

    /** A tenth of the layer's decisions, at least two and at most eight. */
    private static int distance(LayerPlan plan) {
        return Math.min(MOST_DECISIONS, Math.max(2, plan.decisions().size() / 10));
    }

    private boolean isWorthKeeping(Plan plan) {
        if (plan.cost(question.taste()) > limit) return false;
        return kept.stream().allMatch(other -> differsEnough(plan, other));
    }

    private static boolean differsEnough(Plan one, Plan other) {
        if (!one.variation().passes().equals(other.variation().passes())) return true;
        for (int layer = 1; layer < one.layers().size(); layer++) {
            LayerPlan mine = one.layers().get(layer);
            LayerPlan theirs = other.layers().get(layer);
            Set<Object> shared = new HashSet<>(theirs.decisions());
            long different =
                    mine.decisions().stream().filter(d -> !shared.contains(d)).count();
            if (different >= distance(theirs)) return true;
        }
        return false;
    }
}
