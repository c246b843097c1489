package org.mantice.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;

class PicksTest {
    private final List<Offer> offers = States.of("the-rusty-gate").offers();

    private Plan plan(int offer) {
        return offers.get(offer).plan();
    }

    /** With another finger at the start, which no search would find. */
    private static Plan otherwise(Plan plan) {
        List<RightHandPlan.Event> events = new ArrayList<>(plan.rightHand().events());
        RightHandPlan.Event first = events.get(0);
        events.set(
                0, new RightHandPlan.Event(0, first.pass(), first.place(), first.keys(), List.of(5), -1, first.move()));
        RightHandPlan fingers = new RightHandPlan(events, plan.rightHand().costByRule(), List.of());
        return new Plan(plan.label(), true, plan.variation(), plan.leftHand(), plan.bellows(), fingers);
    }

    private List<Offer> turnedRound() {
        List<Offer> round = new ArrayList<>();
        for (int i = offers.size() - 1; i >= 0; i--) round.add(offers.get(i));
        return round;
    }

    @Test
    void theFirstIsChosenAndTheFirstTwoAreComparedWhereNothingWasPicked() {
        assertThat(offers).hasSizeGreaterThanOrEqualTo(3);
        assertThat(Picks.NONE.chosenAmong(offers)).isZero();
        assertThat(Picks.NONE.comparedAmong(offers)).containsExactly(0, 1);
        assertThat(Picks.NONE.comparedAmong(offers.subList(0, 1))).containsExactly(0);
        assertThat(Picks.NONE.chosenAmong(List.of())).isEqualTo(-1);
        assertThat(Picks.NONE.comparedAmong(List.of())).isEmpty();
    }

    @Test
    void pickedPlansAreFoundAgainWhereverTheyStand() {
        int last = offers.size() - 1;
        Picks picks = Picks.NONE.choosing(plan(1)).comparing(List.of(plan(0), plan(2)));

        assertThat(picks.chosenAmong(turnedRound())).isEqualTo(last - 1);
        assertThat(picks.comparedAmong(turnedRound())).containsExactly(last - 2, last);
    }

    @Test
    void plansThatDecideTheSameAreTheSameWhateverTheyAreCalled() {
        Plan renamed = plan(2).labelled("another name", false);

        assertThat(Picks.NONE.choosing(renamed).chosenAmong(offers)).isEqualTo(2);
    }

    @Test
    void elseTheOneWithTheSameLabelIsChosenAndElseTheFirst() {
        Plan lost = otherwise(plan(1));

        assertThat(Picks.NONE.choosing(lost).chosenAmong(offers)).isEqualTo(1);
        assertThat(Picks.NONE.choosing(lost.labelled("unheard of", true)).chosenAmong(offers))
                .isZero();
    }

    @Test
    void asManyAreComparedAsBeforeEvenIfSomeAreLost() {
        Picks picks = Picks.NONE.comparing(List.of(plan(1), plan(2)));

        assertThat(picks.comparedAmong(offers.subList(0, 2))).containsExactly(0, 1);
        assertThat(Picks.NONE.comparing(List.of(plan(2))).comparedAmong(offers)).containsExactly(2);
    }

    @Test
    void aPlanThatChangedIsPickedWhereItWas() {
        Plan changed = otherwise(plan(1));
        Picks picks = Picks.NONE
                .choosing(plan(1))
                .comparing(List.of(plan(0), plan(1)))
                .selecting(Optional.of(plan(1)))
                .changed(plan(1), changed);
        List<Offer> now = new ArrayList<>(offers.subList(0, 1));
        now.add(new Offer("B", changed, offers.get(1).figures(), 0));

        assertThat(picks.chosenAmong(now)).isEqualTo(1);
        assertThat(picks.comparedAmong(now)).containsExactly(0, 1);
        assertThat(picks.selectedAmong(now)).hasValue(1);
    }
}
