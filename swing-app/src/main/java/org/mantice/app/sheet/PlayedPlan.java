package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Concession;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/** A band's decisions by played measure. */
final class PlayedPlan {
    private final Performance performance;
    private final PlanBand band;
    private final Map<Integer, List<RightHandPlan.Event>> fingers = new HashMap<>();
    private final Map<Integer, List<LeftHandPlan.Event>> presses = new HashMap<>();

    PlayedPlan(Performance performance, PlanBand band) {
        this.performance = performance;
        this.band = band;
        for (RightHandPlan.Event event : plan().rightHand().events())
            fingers.computeIfAbsent(moment(event).measure(), m -> new ArrayList<>())
                    .add(event);
        for (LeftHandPlan.Event event : plan().leftHand().events())
            presses.computeIfAbsent(event.measure(), m -> new ArrayList<>()).add(event);
    }

    Performance performance() {
        return performance;
    }

    PlanBand band() {
        return band;
    }

    Plan plan() {
        return band.plan();
    }

    PlayedMeasure measure(int played) {
        return performance.measures().get(played);
    }

    TrebleMoment moment(RightHandPlan.Event event) {
        return performance.treble().get(event.moment());
    }

    List<RightHandPlan.Event> fingers(int played) {
        return fingers.getOrDefault(played, List.of());
    }

    List<LeftHandPlan.Event> presses(int played) {
        return presses.getOrDefault(played, List.of());
    }

    List<BellowsPlan.Stroke> strokes() {
        return plan().bellows().strokes();
    }

    boolean differs(Spot spot) {
        return spot.strip() == Strip.REGISTERS
                ? band.differing().stream().anyMatch(other -> isSame(spot, other))
                : band.differing().contains(spot);
    }

    /** Whether two spots are one: registers are told apart by their pass alone. */
    static boolean isSame(Spot spot, Spot other) {
        if (spot.strip() != Strip.REGISTERS) return spot.equals(other);
        return other.strip() == Strip.REGISTERS && spot.pass() == other.pass();
    }

    /** Whether the player has locked something of what stands here. */
    boolean isLocked(Spot spot) {
        return band.locks().stream().anyMatch(lock -> lock.appliesTo(spot.pass()) && isAt(lock, spot));
    }

    private static boolean isAt(Lock lock, Spot spot) {
        if (lock instanceof Lock.Finger finger)
            return spot.strip() == Strip.FINGERS && finger.place().equals(spot.place()) && finger.note() == spot.part();
        if (lock instanceof Lock.Buttons buttons)
            return spot.strip() == Strip.BUTTONS && buttons.place().equals(spot.place());
        if (lock instanceof Lock.Turn turn)
            return spot.strip() == Strip.BELLOWS && turn.place().equals(spot.place());
        return spot.strip() == Strip.REGISTERS;
    }

    /** Whether a ban gave way for the register of a pass. */
    boolean registerGaveWay(int pass) {
        return plan().variation().concessions().stream().anyMatch(concession -> concession.pass() == pass);
    }

    /** Whether a ban gave way in a layer at this place. */
    static boolean gaveWay(LayerPlan layer, int pass, WrittenPlace place) {
        for (Concession concession : layer.concessions())
            if (concession.pass() == pass && concession.place().equals(place)) return true;
        return false;
    }

    static double inWholes(MusicalTime time) {
        return (double) time.numerator() / time.denominator();
    }
}
