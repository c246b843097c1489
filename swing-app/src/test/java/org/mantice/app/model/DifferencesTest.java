package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.app.sheet.Strip;
import org.mantice.performance.Performance;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Taste;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

class DifferencesTest {
    private final Planning planning = new Planner(States.packs().providers())
            .prepare(new PlanRequest(
                    SmallTunes.TWO_PARTS,
                    SmallTunes.setup().accordion(),
                    SmallTunes.setup().player(),
                    SettingsBuilder.of(SmallTunes.TWO_PARTS).timesThrough(1).build(),
                    List.of(),
                    1));
    private final Performance performance = planning.performance();
    private final Plan plan = best(List.of());

    private Plan best(List<Lock> locks) {
        return ((Alternatives.Found) planning.best(Taste.PLAIN, locks)).best();
    }

    /** With one turn more, at the start of a played measure. */
    private Plan turning(int measure) {
        BellowsPlan old = plan.bellows();
        BellowsPlan.Stroke first = old.strokes().get(0);
        BellowsPlan.Stroke turn = new BellowsPlan.Stroke(
                1,
                1,
                measure,
                new WrittenPlace(performance.measures().get(measure).written(), MusicalTime.ZERO),
                performance.measures().get(measure).start(),
                first.length(),
                first.startMicros(),
                first.endMicros(),
                BellowsPlan.Direction.IN,
                first.endMillilitres(),
                first.startMillilitres(),
                0,
                0,
                first.slowestTempoMilli(),
                "");
        return with(new BellowsPlan(List.of(first, turn), 1_000, 1_000, true, 0, old.costByRule(), List.of()));
    }

    private Plan with(BellowsPlan bellows) {
        return new Plan("turning", true, plan.variation(), plan.leftHand(), bellows, plan.rightHand());
    }

    private Plan with(int moment, List<Integer> fingers, int handPlace) {
        List<RightHandPlan.Event> events = new ArrayList<>(plan.rightHand().events());
        RightHandPlan.Event old = events.get(moment);
        events.set(
                moment,
                new RightHandPlan.Event(moment, old.pass(), old.place(), old.keys(), fingers, handPlace, old.move()));
        RightHandPlan right = new RightHandPlan(events, plan.rightHand().costByRule(), List.of());
        return new Plan("fingers", true, plan.variation(), plan.leftHand(), plan.bellows(), right);
    }

    @Test
    void aPlanDoesNotDifferFromItself() {
        assertThat(Differences.between(List.of(plan, plan, plan), performance)).isEmpty();
        assertThat(Differences.between(List.of(plan), performance)).isEmpty();
        assertThat(Differences.between(List.of(), performance)).isEmpty();
    }

    @Test
    void turnsInTwoPlayingsOfOnePlaceAreTwoDifferences() {
        assertThat(performance.passes()).hasSize(1);
        assertThat(performance.measures().get(1).written())
                .isEqualTo(performance.measures().get(3).written());

        List<Difference> differences = Differences.between(List.of(turning(1), turning(3)), performance);

        assertThat(differences).extracting(Difference::kind).containsOnly(Decision.Kind.TURN);
        assertThat(differences)
                .extracting(difference -> difference.spot().strip())
                .containsOnly(Strip.BELLOWS);
        assertThat(differences)
                .extracting(difference -> difference.spot().measure())
                .containsExactly(1, 3);
        assertThat(differences)
                .extracting(Difference::values)
                .containsExactly(
                        List.of(Optional.of("in"), Optional.empty()), List.of(Optional.empty(), Optional.of("in")));
    }

    @Test
    void aHandPlaceThatFollowsFromAnotherFingerIsNotListed() {
        RightHandPlan.Event third = plan.rightHand().events().get(2);
        int finger = third.fingers().get(0) == 3 ? 2 : 3;

        List<Difference> both =
                Differences.between(List.of(plan, with(2, List.of(finger), third.handPlace() + 1)), performance);
        List<Difference> placeAlone =
                Differences.between(List.of(plan, with(2, third.fingers(), third.handPlace() + 1)), performance);

        assertThat(both).extracting(Difference::kind).containsExactly(Decision.Kind.FINGER);
        assertThat(placeAlone).extracting(Difference::kind).containsExactly(Decision.Kind.HAND_PLACE);
        assertThat(placeAlone.get(0).spot().strip()).isEqualTo(Strip.FINGERS);
    }

    @Test
    void differencesOfAllKindsComeInOrderOfPlay() {
        Plan other = best(List.of(
                new Lock.Octave(OptionalInt.of(1), plan.variation().pass(1).octave() == 1 ? 0 : 1),
                new Lock.Turn(OptionalInt.empty(), new WrittenPlace(2, MusicalTime.ZERO), true)));

        List<Difference> differences = Differences.between(List.of(plan, turning(1), other), performance);

        assertThat(differences).extracting(Difference::values).allMatch(values -> values.size() == 3);
        assertThat(differences)
                .extracting(difference -> difference.spot().strip())
                .contains(Strip.REGISTERS, Strip.BELLOWS);
        assertThat(differences)
                .extracting(difference -> difference.spot().measure())
                .isSorted();
        for (int i = 1; i < differences.size(); i++) {
            Difference before = differences.get(i - 1);
            Difference here = differences.get(i);
            if (before.spot().measure() == here.spot().measure())
                assertThat(before.spot().place())
                        .isLessThanOrEqualTo(here.spot().place());
            if (before.spot().measure() == here.spot().measure()
                    && before.spot().place().equals(here.spot().place()))
                assertThat(before.kind()).isLessThanOrEqualTo(here.kind());
        }
    }

    @Test
    void everySpotOfEveryDecisionLiesInItsPlayedMeasure() {
        for (Site site : Site.of(plan, performance)) {
            assertThat(performance.measures().get(site.spot().measure()).written())
                    .isEqualTo(site.spot().place().measure());
            assertThat(performance.measures().get(site.spot().measure()).pass())
                    .isEqualTo(site.spot().pass());
        }
    }
}
