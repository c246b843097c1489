package org.mantice;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.AccordionPresets;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.BellowsPlan.Stroke;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/** The checks of whole plans find what is wrong in plans that were tampered with. */
class PlanChecksTest {
    private final Planning planning = planning();
    private final Plan plan = ((Alternatives.Found) planning.best(Taste.PLAIN, List.of())).best();

    private static Planning planning() {
        String measure = "\"C\" C4+E4 q, G4 q, E4 h | \"G7\" F4 h, D4 h";
        Tune tune = Tunes.melody("4/4", String.join(" | ", Collections.nCopies(8, measure)));
        return new Planner(Packs.ofClassPath().providers())
                .prepare(new PlanRequest(
                        tune,
                        AccordionPresets.get("student-26-key-48-bass"),
                        PlayerPresets.get("medium-hand"),
                        SettingsBuilder.of(tune)
                                .beatsPerMinute(60)
                                .timesThrough(1)
                                .build(),
                        List.of(),
                        1));
    }

    private void check(Plan tampered) {
        new PlanChecks(planning).check(tampered, Taste.PLAIN);
    }

    private Plan with(List<Stroke> strokes) {
        BellowsPlan old = plan.bellows();
        return new Plan(
                plan.label(),
                plan.provenBest(),
                plan.variation(),
                plan.leftHand(),
                new BellowsPlan(
                        strokes,
                        old.planFactorPerMille(),
                        old.planFactorUncertainPerMille(),
                        old.provenBest(),
                        old.gap(),
                        old.costByRule(),
                        old.concessions()),
                plan.rightHand());
    }

    private Plan withFirstEvent(UnaryOperator<List<Integer>> fingers) {
        List<RightHandPlan.Event> events = new ArrayList<>(plan.rightHand().events());
        RightHandPlan.Event one = events.get(0);
        events.set(
                0,
                new RightHandPlan.Event(
                        one.moment(),
                        one.pass(),
                        one.place(),
                        one.keys(),
                        fingers.apply(one.fingers()),
                        one.handPlace(),
                        one.move()));
        RightHandPlan right = new RightHandPlan(
                events, plan.rightHand().costByRule(), plan.rightHand().concessions());
        return new Plan(plan.label(), plan.provenBest(), plan.variation(), plan.leftHand(), plan.bellows(), right);
    }

    private static Stroke moved(Stroke stroke, long start, long end, int startMillilitres) {
        return new Stroke(
                stroke.index(),
                stroke.pass(),
                stroke.measure(),
                stroke.place(),
                stroke.onset(),
                stroke.length(),
                start,
                end,
                stroke.direction(),
                startMillilitres,
                stroke.endMillilitres(),
                stroke.marginMillilitres(),
                stroke.marginUncertainMillilitres(),
                stroke.slowestTempoMilli(),
                stroke.turnWords());
    }

    @Test
    void planAsPlannedPasses() {
        assertThatCode(() -> check(plan)).doesNotThrowAnyException();
    }

    @Test
    void turnInsideAHeldNoteIsFound() {
        List<Stroke> strokes = new ArrayList<>(plan.bellows().strokes());
        long later = strokes.get(1).startMicros() + 300_000;
        Stroke first = strokes.get(0);
        Stroke second = strokes.get(1);
        strokes.set(0, moved(first, first.startMicros(), later, first.startMillilitres()));
        strokes.set(1, moved(second, later, second.endMicros(), second.startMillilitres()));

        assertThatThrownBy(() -> check(with(strokes))).hasMessageContaining("turns inside held notes");
    }

    @Test
    void airThatDoesNotAddUpIsFound() {
        List<Stroke> strokes = new ArrayList<>(plan.bellows().strokes());
        Stroke second = strokes.get(1);
        strokes.set(1, moved(second, second.startMicros(), second.endMicros(), second.startMillilitres() + 1));

        assertThatThrownBy(() -> check(with(strokes))).isInstanceOf(AssertionError.class);
    }

    @Test
    void fingersTwiceAtOnceOrCrossedAreFound() {
        assertThatThrownBy(() -> check(withFirstEvent(fingers -> List.of(2, 2))))
                .hasMessageContaining("fingers at");
        assertThatThrownBy(() -> check(withFirstEvent(fingers -> List.of(3, 1))))
                .hasMessageContaining("fingers at");
        assertThatThrownBy(() -> check(withFirstEvent(fingers -> List.of(1)))).hasMessageContaining("fingers at");
    }
}
