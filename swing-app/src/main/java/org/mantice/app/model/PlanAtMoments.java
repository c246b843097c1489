package org.mantice.app.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.tune.WrittenPlace;

/** Finds what a plan decides at a moment. */
final class PlanAtMoments {
    private record Where(int measure, WrittenPlace place) {}

    private final Plan plan;
    private final Map<Integer, RightHandPlan.Event> fingers = new HashMap<>();
    private final Map<Where, LeftHandPlan.Event> buttons = new HashMap<>();
    private final Map<Where, BellowsPlan.Stroke> strokes = new HashMap<>();

    PlanAtMoments(Plan plan) {
        this.plan = plan;
        for (RightHandPlan.Event event : plan.rightHand().events()) fingers.put(event.moment(), event);
        for (LeftHandPlan.Event event : plan.leftHand().events())
            buttons.putIfAbsent(new Where(event.measure(), event.place()), event);
        for (BellowsPlan.Stroke stroke : plan.bellows().strokes())
            strokes.put(new Where(stroke.measure(), stroke.place()), stroke);
    }

    Optional<RightHandPlan.Event> fingers(PlayedMoment moment) {
        return moment.treble().map(treble -> fingers.get(treble.index()));
    }

    Optional<LeftHandPlan.Event> buttons(PlayedMoment moment) {
        return moment.main()
                ? Optional.ofNullable(buttons.get(new Where(moment.measure(), moment.place())))
                : Optional.empty();
    }

    /** The stroke that begins just before the moment. */
    Optional<BellowsPlan.Stroke> strokeInto(PlayedMoment moment) {
        return moment.first()
                ? Optional.ofNullable(strokes.get(new Where(moment.measure(), moment.place())))
                : Optional.empty();
    }

    /** The stroke in which the moment lies; empty before the first. */
    Optional<BellowsPlan.Stroke> strokeAt(PlayedMoment moment) {
        Optional<BellowsPlan.Stroke> into = strokeInto(moment);
        if (into.isPresent()) return into;
        List<BellowsPlan.Stroke> all = plan.bellows().strokes();
        for (int i = all.size() - 1; i >= 0; i--)
            if (all.get(i).startMicros() <= moment.micros()) return Optional.of(all.get(i));
        return Optional.empty();
    }

    VariationPlan.PassDecision register(int pass) {
        return plan.variation().pass(pass);
    }
}
