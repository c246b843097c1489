package org.mantice.plan;

import java.util.List;
import org.mantice.player.Taste;

/**
 * A whole plan: the four layers, each planned given those before it.
 *
 * @param label how it came about: {@code "best"}, a leaning's name, or what it differs in
 * @param provenBest whether it is proven best among the plans that answer to its label, layer by layer
 */
public record Plan(
        String label,
        boolean provenBest,
        VariationPlan variation,
        LeftHandPlan leftHand,
        BellowsPlan bellows,
        RightHandPlan rightHand) {
    /** The same plan under another label. */
    public Plan labelled(String other, boolean proven) {
        return new Plan(other, proven, variation, leftHand, bellows, rightHand);
    }

    /** In the order in which they are planned. */
    public List<LayerPlan> layers() {
        return List.of(variation, leftHand, bellows, rightHand);
    }

    /** Micropoints over all layers. */
    public long cost(Taste taste) {
        long total = 0;
        for (LayerPlan layer : layers()) total = Math.addExact(total, layer.cost(taste));
        return total;
    }

    public List<Concession> concessions() {
        return layers().stream().flatMap(layer -> layer.concessions().stream()).toList();
    }

    public List<Decision> decisions() {
        return layers().stream().flatMap(layer -> layer.decisions().stream()).toList();
    }
}
