package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.ButtonNames;
import org.mantice.layer.Choice;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.rule.RuleSet;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

/** A lock on a place in a pass holds each time that it is played in it, and so does a choice there. */
class ChoicesInRepeatedPartsTest {
    private static final Tune TWO_PARTS = Tunes.melody(
            "4/4",
            "@start \"C\" C4 q, E4 q, G4 q, C5 q | @end \"G7\" D5 q, B4 q, G4 e, F4 e, D4 q"
                    + " | @start \"F\" F4 q, A4 q, C5 q, F5 q | @end \"C\" E5 q, G4 q, C4 h");
    private static final int PLAYINGS = 2;

    private final Planning planning = new Planner(Packs.ofClassPath().providers())
            .prepare(new PlanRequest(
                    TWO_PARTS,
                    AccordionPresets.get("full-41-key-120-bass"),
                    PlayerPresets.get("medium-hand"),
                    SettingsBuilder.of(TWO_PARTS).timesThrough(1).build(),
                    List.of(),
                    1));
    private final Plan best = ((Alternatives.Found) planning.best(Taste.PLAIN, List.of())).best();

    private List<Choice> choices(RuleSet layer, WrittenPlace place) {
        assertThat(planning.performance().passes()).hasSize(1);
        assertThat(planning.performance().measures())
                .filteredOn(measure -> measure.written() == place.measure())
                .hasSize(PLAYINGS);
        List<Choice> choices = planning.choicesAt(best, layer, Taste.PLAIN, List.of(), 1, place);
        assertThat(choices).hasSizeGreaterThan(1);
        assertThat(choices).extracting(Choice::decision).doesNotHaveDuplicates();
        assertThat(choices).extracting(Choice::extraCost).isSorted();
        return choices;
    }

    private Plan under(RuleSet layer, Lock lock) {
        return planning.retouch(best, layer, Taste.PLAIN, List.of(lock), () -> false)
                .orElseThrow();
    }

    @Test
    void buttonsCostWhatTheyCostEachTimeTheyArePressed() {
        for (int measure = 0; measure < 4; measure++) {
            WrittenPlace place = new WrittenPlace(measure, MusicalTime.of(1, 2));
            for (Choice choice : choices(RuleSet.JUMP_COST, place)) {
                Lock lock = new Lock.Buttons(
                        OptionalInt.of(1),
                        place,
                        ButtonNames.all(choice.decision().value()));
                assertThat(under(RuleSet.JUMP_COST, lock).leftHand().cost(Taste.PLAIN)
                                - best.leftHand().cost(Taste.PLAIN))
                        .as("%s", choice)
                        .isEqualTo(choice.extraCost());
            }
        }
    }

    @Test
    void fingersCostWhatTheyCostEachTimeTheyAreUsed() {
        for (int measure = 0; measure < 4; measure++) {
            WrittenPlace place = new WrittenPlace(measure, MusicalTime.of(1, 4));
            for (Choice choice : choices(RuleSet.FINGERING_SPAN, place)) {
                if (choice.decision().kind() != Decision.Kind.FINGER) continue;
                Lock lock = new Lock.Finger(
                        OptionalInt.of(1),
                        place,
                        0,
                        Integer.parseInt(choice.decision().value()));
                assertThat(under(RuleSet.FINGERING_SPAN, lock).rightHand().cost(Taste.PLAIN)
                                - best.rightHand().cost(Taste.PLAIN))
                        .as("%s", choice)
                        .isEqualTo(choice.extraCost());
            }
        }
    }
}
