package org.mantice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.mantice.instrument.Accordion;
import org.mantice.layer.RuleBook;
import org.mantice.layer.bellows.BellowsLayer;
import org.mantice.layer.lefthand.LeftHandLayer;
import org.mantice.layer.righthand.RightHandLayer;
import org.mantice.layer.variation.VariationLayer;
import org.mantice.performance.Performance;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Player;

/** The layers of one planning, each made when first asked for and kept while it is likely to be asked again. */
final class PlanningLayers {
    private static final int KEPT = 6;

    private record Air(List<VariationPlan.PassDecision> passes, List<LeftHandPlan.Event> buttons) {}

    private final Performance performance;
    private final Accordion accordion;
    private final Player player;
    private final RuleBook book;
    private final VariationLayer variation;
    private final Map<List<Integer>, LeftHandLayer> leftHands = recent();
    private final Map<List<Integer>, RightHandLayer> rightHands = recent();
    private final Map<Air, BellowsLayer> bellows = recent();

    PlanningLayers(Performance performance, Accordion accordion, Player player, RuleBook book) {
        this.performance = performance;
        this.accordion = accordion;
        this.player = player;
        this.book = book;
        this.variation = new VariationLayer(performance, accordion, book);
    }

    VariationLayer variation() {
        return variation;
    }

    /** Registers and octaves do not concern the left hand: one layer serves all. */
    LeftHandLayer leftHand(VariationPlan registers) {
        return kept(leftHands, List.of(), key -> LeftHandLayer.of(performance, registers, accordion, player, book));
    }

    /** Only octaves concern the right hand. */
    RightHandLayer rightHand(VariationPlan registers) {
        List<Integer> octaves = registers.passes().stream()
                .map(VariationPlan.PassDecision::octave)
                .toList();
        return kept(rightHands, octaves, key -> new RightHandLayer(performance, registers, accordion, player, book));
    }

    BellowsLayer bellows(VariationPlan registers, LeftHandPlan leftHand) {
        return kept(
                bellows,
                new Air(registers.passes(), leftHand.events()),
                key -> BellowsLayer.of(performance, registers, leftHand, accordion, player, book));
    }

    private static <K, L> L kept(Map<K, L> layers, K key, Function<K, L> maker) {
        L layer = layers.get(key);
        if (layer == null) {
            layer = maker.apply(key);
            layers.put(key, layer);
        }
        return layer;
    }

    private static <K, L> Map<K, L> recent() {
        return new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, L> eldest) {
                return size() > KEPT;
            }
        };
    }
}
