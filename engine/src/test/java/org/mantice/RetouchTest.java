package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.ButtonNames;
import org.mantice.layer.Choice;
import org.mantice.layer.RuleBook;
import org.mantice.performance.SettingsBuilder;
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

class RetouchTest {
    private static final Tune WALTZ = Tunes.melody(
            "3/4",
            "\"C\" C4 q, E4 q, G4 q | C5 h, B4 q | \"F\" A4 q, C5 q, A4 q | \"C\" G4 h. | \"G7\" F4 q, A4 q, F4 q"
                    + " | \"Am\" E4 q, G4 q, C5 q | \"G7\" D5 q, B4 q, G4 q | \"C\" C5 h.");
    private static final WrittenPlace FIFTH = new WrittenPlace(4, MusicalTime.ZERO);
    private static final OptionalInt EVERY_PASS = OptionalInt.empty();

    private final Planning planning = new Planner(Packs.ofClassPath().providers())
            .prepare(new PlanRequest(
                    WALTZ,
                    AccordionPresets.get("full-41-key-120-bass"),
                    PlayerPresets.get("medium-hand"),
                    SettingsBuilder.of(WALTZ).timesThrough(2).build(),
                    List.of(),
                    6));
    private final Plan best = best(Taste.PLAIN, List.of());

    private Plan best(Taste taste, List<Lock> locks) {
        return ((Alternatives.Found) planning.best(taste, locks)).best();
    }

    private Optional<Plan> retouched(Plan plan, RuleSet touched, Taste taste, Lock... locks) {
        return planning.retouch(plan, touched, taste, List.of(locks), () -> false);
    }

    @ParameterizedTest
    @EnumSource(RuleSet.class)
    void nothingChangesWhereNothingWasAskedFor(RuleSet touched) {
        assertThat(retouched(best, touched, Taste.PLAIN)).contains(best);
    }

    @ParameterizedTest
    @CsvSource({
        "FINGERING_SPAN, fingering.place-change, 0",
        "FINGERING_SPAN, fingering.weak-finger, 20000",
        "BELLOWS_POLICY, bellows.turns, 9000",
        "JUMP_COST, left-hand.finger-method, 0",
        "REPEAT_VARIATION, variation.hungry-register, 90000"
    })
    void isTheBestPlanWhereTheEarlierLayersStayTheBest(RuleSet touched, String rule, int weight) {
        assertThat(planning.rules().entries()).extracting(RuleBook.Entry::id).contains(rule);
        Taste taste = Taste.PLAIN.with(rule, weight);
        Plan whole = best(taste, List.of());
        assertThat(whole.layers()).isNotEqualTo(best.layers());

        assertThat(retouched(best, touched, taste)).contains(whole);
    }

    @Test
    void earlierLayersStayAsTheyAreInThePlan() {
        Plan other = best(Taste.PLAIN, List.of(new Lock.Buttons(EVERY_PASS, FIFTH, otherButtons())));
        assertThat(other.leftHand().events()).isNotEqualTo(best.leftHand().events());

        Plan retouched = retouched(other, RuleSet.BELLOWS_POLICY, Taste.PLAIN, new Lock.Turn(EVERY_PASS, FIFTH, true))
                .orElseThrow();

        assertThat(retouched.bellows()).isNotEqualTo(other.bellows());
        assertThat(retouched.label()).isEqualTo(other.label());
        assertThat(retouched.variation()).isEqualTo(other.variation());
        assertThat(retouched.leftHand()).isEqualTo(other.leftHand());
        assertThat(retouched.rightHand()).isEqualTo(other.rightHand());
    }

    /** Those that would be second best. */
    private Set<BassButton> otherButtons() {
        List<Choice> choices = planning.choicesAt(best, RuleSet.JUMP_COST, Taste.PLAIN, List.of(), 1, FIFTH);
        return ButtonNames.all(choices.get(1).decision().value());
    }

    @Test
    void bellowsFollowTheLeftHandAndTheRightHandDoesNot() {
        Set<BassButton> buttons = otherButtons();

        Plan retouched = retouched(best, RuleSet.JUMP_COST, Taste.PLAIN, new Lock.Buttons(EVERY_PASS, FIFTH, buttons))
                .orElseThrow();

        assertThat(retouched.leftHand().events())
                .filteredOn(event -> event.place().equals(FIFTH))
                .isNotEmpty()
                .allMatch(event -> Set.copyOf(event.buttons()).equals(buttons));
        assertThat(planning.rescore(retouched)).isEqualTo(retouched);
        assertThat(retouched.rightHand()).isEqualTo(best.rightHand());
    }

    @Test
    void bothHandsFollowTheRegisters() {
        int octave = best.variation().pass(2).octave() == 1 ? 0 : 1;

        Plan retouched = retouched(
                        best, RuleSet.REPEAT_VARIATION, Taste.PLAIN, new Lock.Octave(OptionalInt.of(2), octave))
                .orElseThrow();

        assertThat(retouched.variation().pass(2).octave()).isEqualTo(octave);
        assertThat(retouched.leftHand()).isEqualTo(best.leftHand());
        assertThat(retouched.rightHand().events()).isNotEqualTo(best.rightHand().events());
        assertThat(planning.rescore(retouched)).isEqualTo(retouched);
    }

    @Test
    void locksOfTheTouchedLayerHold() {
        int finger = best.rightHand().events().get(12).fingers().get(0) == 3 ? 2 : 3;
        WrittenPlace place = best.rightHand().events().get(12).place();

        Plan fingers = retouched(
                        best, RuleSet.FINGERING_SPAN, Taste.PLAIN, new Lock.Finger(EVERY_PASS, place, 0, finger))
                .orElseThrow();
        boolean turned = isTurn(best, FIFTH);
        Plan strokes = retouched(best, RuleSet.BELLOWS_POLICY, Taste.PLAIN, new Lock.Turn(EVERY_PASS, FIFTH, !turned))
                .orElseThrow();

        assertThat(fingers.rightHand().events())
                .filteredOn(event -> event.place().equals(place))
                .isNotEmpty()
                .allMatch(event -> event.fingers().get(0) == finger);
        assertThat(isTurn(strokes, FIFTH)).isNotEqualTo(turned);
    }

    private static boolean isTurn(Plan plan, WrittenPlace place) {
        return plan.bellows().strokes().stream()
                .anyMatch(stroke -> stroke.place().equals(place));
    }

    @Test
    void thereIsNoneWhereTheTouchedLayerCannotBePlayed() {
        WrittenPlace nowhere = new WrittenPlace(4, MusicalTime.of(1, 64));

        assertThat(retouched(best, RuleSet.BELLOWS_POLICY, Taste.PLAIN, new Lock.Turn(EVERY_PASS, nowhere, true)))
                .isEmpty();
        assertThat(retouched(best, RuleSet.FINGERING_SPAN, Taste.PLAIN, new Lock.Finger(EVERY_PASS, nowhere, 0, 1)))
                .isEmpty();
        assertThat(retouched(
                        best,
                        RuleSet.JUMP_COST,
                        Taste.PLAIN,
                        new Lock.Buttons(EVERY_PASS, nowhere, ButtonNames.all("C bass"))))
                .isEmpty();
        assertThat(retouched(best, RuleSet.REPEAT_VARIATION, Taste.PLAIN, new Lock.Register(EVERY_PASS, "no-switch")))
                .isEmpty();
    }

    @Test
    void stopsWhenCancelled() {
        assertThatThrownBy(() -> planning.retouch(best, RuleSet.FINGERING_SPAN, Taste.PLAIN, List.of(), () -> true))
                .isInstanceOf(CancellationException.class);
    }
}
