package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.layer.Pricing;
import org.mantice.layer.Tables;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Rule;

/** The postures of a moment and what each rule charges for them, shared between equal moments. */
final class MomentTable {
    final Moment moment;
    final List<Posture> postures;
    final List<FingerMoment> steps;
    /** By rule and posture. */
    final int[][] costs;

    MomentTable(Moment moment, int handSpanTenths, List<Rule<FingerMoment>> rules, String place) {
        this.moment = moment;
        this.postures = Postures.of(moment.keys(), handSpanTenths);
        List<FingerMoment> all = new ArrayList<>();
        for (Posture posture : postures) all.add(step(moment, posture.fingers(), posture.place(), handSpanTenths));
        this.steps = List.copyOf(all);
        this.costs = new int[rules.size()][postures.size()];
        for (int rule = 0; rule < costs.length; rule++)
            for (int posture = 0; posture < costs[rule].length; posture++)
                costs[rule][posture] = Tables.stored(Pricing.cost(rules.get(rule), steps.get(posture), place));
    }

    static FingerMoment step(Moment moment, List<Integer> fingers, int place, int handSpanTenths) {
        return new FingerMoment(
                moment.keys(),
                fingers,
                moment.held(),
                moment.printed(),
                place,
                moment.durationMillis(),
                handSpanTenths);
    }
}
