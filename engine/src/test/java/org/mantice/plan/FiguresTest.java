package org.mantice.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
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
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

class FiguresTest {
    private static final Tune TUNE = Tunes.melody(
            "3/4", "\"G7\" C4 q, D4 q, E4 q | F4 q, G4 q, F4 q | \"C\" E4 q, D4 q, C4 q | \"G7\" D4 h. | \"C\" C4 h.");

    @Test
    void chordWithoutItsSeventhCountsOnceHoweverOftenItIsPressed() {
        Planning planning = planning("student-26-key-48-bass");
        Plan plan = best(planning);
        long presses = plan.leftHand().events().stream()
                .filter(event -> !event.missing().isEmpty())
                .count();

        Figures figures = Figures.of(plan, planning.performance());

        assertThat(presses).isGreaterThan(2);
        assertThat(figures.missingTones()).isEqualTo(2);
        assertThat(Figures.of(best(planning("full-41-key-120-bass")), planning.performance())
                        .missingTones())
                .isZero();
    }

    @Test
    void marksAreTheFirstFingerTheMovesTheTurnsAndTheSwitches() {
        Planning planning = planning("full-41-key-120-bass");
        Plan plan = best(planning);

        assertThat(Figures.of(plan, planning.performance()).marksToWrite())
                .isEqualTo(
                        1 + plan.rightHand().positionChanges() + plan.bellows().turns() + 1);
    }

    @Test
    void planWithoutAnyPassHasNoMarks() {
        Plan silent = new Plan(
                "none",
                true,
                new VariationPlan(List.of(), new TreeMap<>(), List.of()),
                new LeftHandPlan(List.of(), new TreeMap<>(), List.of()),
                new BellowsPlan(List.of(), 1_000, 1_000, true, 0, new TreeMap<>(), List.of()),
                new RightHandPlan(List.of(), new TreeMap<>(), List.of()));

        assertThat(Figures.of(silent, planning("full-41-key-120-bass").performance())
                        .marksToWrite())
                .isZero();
    }

    private static Plan best(Planning planning) {
        return ((Alternatives.Found) planning.best(Taste.PLAIN, List.of())).best();
    }

    private static Planning planning(String accordion) {
        return new Planner(Packs.ofClassPath().providers())
                .prepare(new PlanRequest(
                        TUNE,
                        AccordionPresets.get(accordion),
                        PlayerPresets.get("medium-hand"),
                        SettingsBuilder.of(TUNE).timesThrough(1).build(),
                        List.of(),
                        1));
    }
}
