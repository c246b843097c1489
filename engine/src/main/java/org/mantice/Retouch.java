package org.mantice;

import java.util.List;
import java.util.Optional;
import org.mantice.layer.Layer;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.rule.RuleSet;

/** A plan with one layer searched again, and with those that rest on it where it came out otherwise. */
final class Retouch {
    private final PlanningLayers layers;
    private final Plan plan;
    private final Question question;
    private boolean proven;

    Retouch(PlanningLayers layers, Plan plan, Question question) {
        this.layers = layers;
        this.plan = plan;
        this.question = question;
        this.proven = plan.provenBest();
    }

    /** Empty if a layer that is searched again cannot be played. */
    Optional<Plan> from(RuleSet touched) {
        return switch (touched) {
            case REPEAT_VARIATION -> best(layers.variation()).flatMap(registers -> whole(registers, plan.leftHand()));
            case JUMP_COST -> best(layers.leftHand(plan.variation())).flatMap(left -> whole(plan.variation(), left));
            case BELLOWS_POLICY ->
                best(layers.bellows(plan.variation(), plan.leftHand()))
                        .map(bellows -> made(plan.variation(), plan.leftHand(), bellows, plan.rightHand()));
            case FINGERING_SPAN ->
                best(layers.rightHand(plan.variation()))
                        .map(right -> made(plan.variation(), plan.leftHand(), plan.bellows(), right));
        };
    }

    private Optional<Plan> whole(VariationPlan registers, LeftHandPlan left) {
        boolean sameAir = registers.passes().equals(plan.variation().passes())
                && left.events().equals(plan.leftHand().events());
        Optional<BellowsPlan> bellows = sameAir ? Optional.of(plan.bellows()) : best(layers.bellows(registers, left));
        Optional<RightHandPlan> right = octaves(registers).equals(octaves(plan.variation()))
                ? Optional.of(plan.rightHand())
                : best(layers.rightHand(registers));
        return bellows.flatMap(strokes -> right.map(fingers -> made(registers, left, strokes, fingers)));
    }

    private static List<Integer> octaves(VariationPlan registers) {
        return registers.passes().stream()
                .map(VariationPlan.PassDecision::octave)
                .toList();
    }

    private <P extends LayerPlan> Optional<P> best(Layer<P> layer) {
        if (!(layer.best(question) instanceof Outcome.Found<P> found)) return Optional.empty();
        proven &= found.proven();
        return Optional.of(found.best());
    }

    private Plan made(VariationPlan registers, LeftHandPlan left, BellowsPlan bellows, RightHandPlan right) {
        return new Plan(plan.label(), proven, registers, left, bellows, right);
    }
}
