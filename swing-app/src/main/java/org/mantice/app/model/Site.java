package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Decision;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * A decision of a plan with its spot.
 *
 * @param moment index of the treble moment, which tells grace notes from their note; 0 for what is no finger
 */
record Site(Decision decision, Spot spot, int moment) {
    /** Where a decision of a kind is shown. */
    static Strip strip(Decision.Kind kind) {
        return switch (kind) {
            case FINGER, HAND_PLACE -> Strip.FINGERS;
            case TURN -> Strip.BELLOWS;
            case BUTTONS -> Strip.BUTTONS;
            case REGISTER, OCTAVE -> Strip.REGISTERS;
        };
    }

    /** Every decision of a plan. */
    static List<Site> of(Plan plan, Performance performance) {
        List<Site> sites = new ArrayList<>();
        for (Decision decision : plan.variation().decisions()) {
            PlayedMeasure first = performance
                    .measures()
                    .get(performance.passes().get(decision.pass() - 1).firstMeasure());
            WrittenPlace start = new WrittenPlace(first.written(), MusicalTime.ZERO);
            Spot spot = new Spot(Strip.REGISTERS, first.index(), decision.pass(), start, 0);
            sites.add(new Site(decision, spot, 0));
        }
        List<Decision> buttons = plan.leftHand().decisions();
        List<LeftHandPlan.Event> presses = plan.leftHand().events();
        for (int i = 0; i < presses.size(); i++)
            sites.add(site(buttons.get(i), presses.get(i).measure(), 0));
        List<Decision> turns = plan.bellows().decisions();
        List<BellowsPlan.Stroke> strokes = plan.bellows().strokes();
        for (int i = 0; i < strokes.size(); i++)
            sites.add(site(turns.get(i), strokes.get(i).measure(), 0));
        addFingers(plan.rightHand(), performance, sites);
        return sites;
    }

    private static void addFingers(RightHandPlan plan, Performance performance, List<Site> sites) {
        int next = 0;
        List<Decision> fingers = plan.decisions();
        for (RightHandPlan.Event event : plan.events()) {
            int measure = performance.treble().get(event.moment()).measure();
            for (int i = 0; i <= event.fingers().size(); i++)
                sites.add(site(fingers.get(next++), measure, event.moment()));
        }
    }

    private static Site site(Decision decision, int measure, int moment) {
        return new Site(
                decision,
                new Spot(strip(decision.kind()), measure, decision.pass(), decision.place(), decision.part()),
                moment);
    }
}
