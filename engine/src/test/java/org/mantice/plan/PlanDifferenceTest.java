package org.mantice.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.Planner;
import org.mantice.Planning;
import org.mantice.instrument.AccordionPresets;
import org.mantice.performance.SettingsBuilder;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class PlanDifferenceTest {
    /** Two parts, each played twice: one pass. */
    private static final Tune TWO_PARTS = Tunes.melody(
            "4/4",
            "@start \"C\" C4 q, E4 q, G4 q, E4 q | @end \"G7\" D4 q, F4 q, D4 h"
                    + " | @start \"F\" F4 q, A4 q, F4 h | @end \"C\" E4 q, G4 q, C4 h");

    @Test
    void onePlaceInTwoPlayingsOfAPartIsTwoDecisions() {
        Planning planning = new Planner(Packs.ofClassPath().providers())
                .prepare(new PlanRequest(
                        TWO_PARTS,
                        AccordionPresets.get("full-41-key-120-bass"),
                        PlayerPresets.get("medium-hand"),
                        SettingsBuilder.of(TWO_PARTS).timesThrough(1).build(),
                        List.of(),
                        1));
        assertThat(planning.performance().passes()).hasSize(1);
        Plan plan = ((Alternatives.Found) planning.best(Taste.PLAIN, List.of())).best();
        Plan firstTime = turning(plan, 1);
        Plan secondTime = turning(plan, 3);

        List<PlanDifference> differences = PlanDifference.between(firstTime, secondTime);

        assertThat(differences)
                .extracting(PlanDifference::first, PlanDifference::second)
                .containsExactly(
                        tuple(Optional.of("in"), Optional.empty()), tuple(Optional.empty(), Optional.of("in")));
    }

    /** With one turn, at the start of a played measure. */
    private static Plan turning(Plan plan, int measure) {
        BellowsPlan.Stroke first = plan.bellows().strokes().get(0);
        BellowsPlan.Stroke turn = new BellowsPlan.Stroke(
                1,
                1,
                measure,
                new WrittenPlace(1, MusicalTime.ZERO),
                first.onset(),
                first.length(),
                first.startMicros(),
                first.endMicros(),
                first.direction().turned(),
                first.endMillilitres(),
                first.startMillilitres(),
                0,
                0,
                first.slowestTempoMilli(),
                "");
        BellowsPlan bellows = new BellowsPlan(
                List.of(first, turn), 1_000, 1_000, true, 0, plan.bellows().costByRule(), List.of());
        return new Plan(plan.label(), true, plan.variation(), plan.leftHand(), bellows, plan.rightHand());
    }
}
