package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mantice.layer.lefthand.LeftHands.best;
import static org.mantice.layer.lefthand.LeftHands.found;
import static org.mantice.layer.lefthand.LeftHands.inFour;
import static org.mantice.layer.lefthand.LeftHands.layer;
import static org.mantice.layer.lefthand.LeftHands.waltz;
import static org.mantice.layer.lefthand.LeftHands.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.StradellaBass;
import org.mantice.layer.Choice;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleFailureException;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Explanation;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.LeftHandPlan.Jump;
import org.mantice.plan.Lock;
import org.mantice.plan.Sentence;
import org.mantice.player.BassMethod;
import org.mantice.player.Taste;
import org.mantice.rule.Fact;
import org.mantice.rule.GiveWay;
import org.mantice.rule.lefthand.LeftHandRules;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class LeftHandLayerTest {
    private static final Performance TUNE = inFour(2, "C|Am|Dm7|G7|C|F Fm6|C/E A7|Dm7 G7|C");

    private static Question ask(Lock... locks) {
        return new Question(Taste.PLAIN, List.of(locks), 1, () -> false);
    }

    private static WrittenPlace at(int measure, int quarter) {
        return new WrittenPlace(measure, MusicalTime.of(quarter, 4));
    }

    private static Lock.Buttons lock(int measure, int quarter, BassButton... buttons) {
        return new Lock.Buttons(OptionalInt.empty(), at(measure, quarter), Set.of(buttons));
    }

    @Test
    void everyPlanFitsTheInstrument() {
        for (int buttons : StradellaBass.SIZES)
            for (BassMethod method : BassMethod.values())
                for (LeftHandPlan.Event event :
                        best(layer(TUNE, buttons, method, LeftHands.RULES)).events()) {
                    assertThat(event.buttons()).isNotEmpty().allMatch(StradellaBass.ofSize(buttons)::has);
                    assertThat(event.fingers()).hasSameSizeAs(event.buttons()).doesNotHaveDuplicates();
                    assertThat(event.fingers()).allMatch(finger -> finger >= 2 && finger <= 5);
                    assertThat(event.releaseMicros()).isGreaterThan(event.onsetMicros());
                }
    }

    @Test
    void bestPlansComeInOrderAndNoneTwice() {
        LeftHandLayer layer = layer(TUNE, 120);

        List<LeftHandPlan> plans = found(layer.best(new Question(Taste.PLAIN, List.of(), 40, () -> false)))
                .plans();

        assertThat(plans).hasSize(40);
        assertThat(new HashSet<>(plans.stream().map(LeftHandPlan::events).toList()))
                .hasSize(40);
        assertThat(plans).isSortedAccordingTo((a, b) -> Long.compare(a.cost(Taste.PLAIN), b.cost(Taste.PLAIN)));
        assertThat(plans.get(0)).isEqualTo(best(layer));
    }

    @Test
    void orderOfRulesChangesNothing() {
        List<org.mantice.rule.Rule<?>> backwards = new ArrayList<>(new LeftHandRules().rules());
        java.util.Collections.reverse(backwards);

        LeftHandPlan other = best(layer(TUNE, 72, new OnePack("test.backwards", backwards)));

        assertThat(other).isEqualTo(best(layer(TUNE, 72)));
    }

    @Test
    void newTasteAndLocksAreAnsweredWithoutCallingARule() {
        CountingRules rules = new CountingRules();
        LeftHandLayer layer = layer(TUNE, 120, rules);
        LeftHandPlan plan = best(layer);
        long calls = rules.calls();

        layer.best(Question.best(Taste.PLAIN.with("left-hand.hand-move", 0)));
        layer.best(ask(lock(0, 2, new BassButton(BassRow.COUNTERBASS, 0))));
        layer.apart(ask(), List.of(plan), 3);
        layer.choicesAt(ask(), 1, at(0, 2));

        assertThat(calls).isPositive();
        assertThat(rules.calls()).isEqualTo(calls);
    }

    @Test
    void equalContextsArePricedOnce() {
        CountingRules twice = new CountingRules();
        CountingRules often = new CountingRules();
        layer(inFour(2, "C|G7|C|G7|C|N.C."), 72, twice);
        layer(inFour(9, "C|G7|C|G7|C|N.C."), 72, often);

        // A quarter lasts whole milliseconds here, so further passes bring no new context.
        assertThat(often.calls()).isEqualTo(twice.calls());
    }

    @Test
    void explanationAddsUpToTheCostAndRescoringGivesThePlanAgain() {
        LeftHandLayer layer = layer(TUNE, 48);
        Taste taste = Taste.PLAIN.with("left-hand.stretch", 1_300).with("left-hand.hand-move", 700);
        LeftHandPlan plan = found(layer.best(Question.best(taste))).best();

        Explanation explanation = layer.explain(plan, taste);

        assertThat(explanation.cost()).isEqualTo(plan.cost(taste));
        assertThat(explanation.children()).hasSize(new LeftHandRules().rules().size());
        for (Explanation rule : explanation.children())
            assertThat(rule.cost())
                    .as(rule.key())
                    .isEqualTo(plan.costByRule().get(rule.key()) * taste.perMille(rule.key()));
        assertThat(layer.rescore(plan)).isEqualTo(plan);
    }

    @Test
    void differenceOfTwoPlansIsTheOppositeTheOtherWay() {
        LeftHandLayer layer = layer(TUNE, 72);
        List<LeftHandPlan> plans = found(layer.best(new Question(Taste.PLAIN, List.of(), 5, () -> false)))
                .plans();
        Explanation one = layer.explain(plans.get(0), Taste.PLAIN);
        Explanation other = layer.explain(plans.get(4), Taste.PLAIN);

        assertThat(one.minus(other).cost()).isEqualTo(-other.minus(one).cost());
        assertThat(one.minus(other).cost())
                .isEqualTo(plans.get(0).cost(Taste.PLAIN) - plans.get(4).cost(Taste.PLAIN));
    }

    /** Common practice, no source: from C to A the hand slides over G and D. */
    @Test
    void jumpFromCToANamesTheButtonsThatItPassesOver() {
        LeftHandLayer layer = layer(waltz(1, "C|A|N.C."), 72);
        LeftHandPlan plan = best(layer);

        Explanation moves = layer.explain(plan, Taste.PLAIN).children().stream()
                .filter(rule -> rule.key().equals("left-hand.hand-move"))
                .findFirst()
                .orElseThrow();

        assertThat(moves.children()).hasSize(1);
        assertThat(moves.children().get(0).place()).isEqualTo("pass 1, measure 2, beat 1");
        assertThat(moves.children().get(0).facts())
                .contains(Fact.of("left-hand.hand-move.passes", "G, D"))
                .contains(Fact.of("left-hand.hand-move.time", 393, 200));
        assertThat(plan.events().get(3).jump()).isEqualTo(Jump.LARGE);
        assertThat(plan.events().get(3).jumpMillis()).isEqualTo(393);
    }

    @Test
    void jumpsAreGradedByColumnsAndTime() {
        assertThat(PlanWriter.jump(0, 0, 0)).isEqualTo(Jump.NONE);
        assertThat(PlanWriter.jump(-1, 247, 0)).isEqualTo(Jump.SMALL);
        assertThat(PlanWriter.jump(2, 335, 400)).isEqualTo(Jump.SMALL);
        assertThat(PlanWriter.jump(-2, 335, 200)).isEqualTo(Jump.LARGE);
        assertThat(PlanWriter.jump(3, 393, 5_000)).isEqualTo(Jump.LARGE);
    }

    @Test
    void lockedButtonsAreKeptInEveryPassOrInOne() {
        LeftHandLayer layer = layer(TUNE, 120);
        BassButton third = new BassButton(BassRow.COUNTERBASS, 0);

        LeftHandPlan everywhere = found(layer.best(ask(lock(0, 2, third)))).best();
        LeftHandPlan once = found(layer.best(ask(new Lock.Buttons(OptionalInt.of(2), at(0, 2), Set.of(third)))))
                .best();

        assertThat(everywhere.events())
                .filteredOn(event -> event.place().equals(at(0, 2)))
                .hasSize(2)
                .allMatch(event -> event.buttons().equals(List.of(third)));
        assertThat(once.events())
                .filteredOn(event -> event.place().equals(at(0, 2)))
                .extracting(event -> event.buttons().equals(List.of(third)))
                .containsExactly(false, true);
    }

    private static LeftHandLayer withAlternate() {
        Tune tune = Tunes.melody("4/4", "\"C\" C4 w | \"G(Em)\" D4 w | \"C\" C4 w");
        return layer(
                Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(3).build()), 120);
    }

    private static List<List<BassButton>> firstPresses(LeftHandPlan plan) {
        return plan.events().stream()
                .filter(event -> event.place().equals(at(1, 0)))
                .map(LeftHandPlan.Event::buttons)
                .toList();
    }

    @Test
    void aLockOnEveryPassHoldsWhereverTheSameChordIsPlayed() {
        BassButton asCounterbass = new BassButton(BassRow.COUNTERBASS, 0);
        BassButton ofG = new BassButton(BassRow.COUNTERBASS, -3);
        LeftHandLayer layer = withAlternate();

        List<List<BassButton>> free = firstPresses(best(layer));
        List<List<BassButton>> later =
                firstPresses(found(layer.best(ask(lock(1, 0, asCounterbass)))).best());
        List<List<BassButton>> first =
                firstPresses(found(layer.best(ask(lock(1, 0, ofG)))).best());

        assertThat(later.get(0)).isEqualTo(free.get(0));
        assertThat(later.subList(1, 3)).containsOnly(List.of(asCounterbass));
        assertThat(first.get(0)).isEqualTo(List.of(ofG));
        assertThat(first.subList(1, 3)).isEqualTo(free.subList(1, 3));
    }

    @Test
    void aLockOnOnePassAsksForTheChordOfThatPass() {
        Lock.Buttons wrong =
                new Lock.Buttons(OptionalInt.of(1), at(1, 0), Set.of(new BassButton(BassRow.COUNTERBASS, 0)));

        assertThat(withAlternate().best(ask(wrong))).isInstanceOf(Outcome.Impossible.class);
    }

    @Test
    void contradictoryLocksAreNamedAsASmallestSet() {
        LeftHandLayer layer = layer(TUNE, 120);
        Lock.Buttons fine = lock(3, 0, new BassButton(BassRow.BASS, 1));
        Lock.Buttons fifth = lock(0, 2, new BassButton(BassRow.BASS, 1));
        Lock.Buttons third = lock(0, 2, new BassButton(BassRow.COUNTERBASS, 0));

        Outcome<LeftHandPlan> outcome = layer.best(ask(fine, fifth, third));

        assertThat(outcome).isInstanceOf(Outcome.Impossible.class);
        var obstacle = ((Outcome.Impossible<LeftHandPlan>) outcome).obstacles().get(0);
        assertThat(obstacle.code()).isEqualTo("locks-contradict");
        assertThat(obstacle.message()).contains("G bass", "E counterbass");
        assertThat(obstacle.remedies()).hasSize(2);
    }

    @Test
    void lockOnButtonsThatCannotPlayThereIsNamedAlone() {
        LeftHandLayer layer = layer(TUNE, 120);

        Outcome<LeftHandPlan> strange = layer.best(ask(lock(0, 0, new BassButton(BassRow.BASS, 6))));
        Outcome<LeftHandPlan> nowhere = layer.best(ask(new Lock.Buttons(
                OptionalInt.empty(),
                new WrittenPlace(0, MusicalTime.of(1, 16)),
                Set.of(new BassButton(BassRow.BASS, 0)))));

        assertThat(((Outcome.Impossible<LeftHandPlan>) strange)
                        .obstacles()
                        .get(0)
                        .message())
                .contains("no such choice");
        assertThat(((Outcome.Impossible<LeftHandPlan>) nowhere)
                        .obstacles()
                        .get(0)
                        .message())
                .contains("presses nothing");
    }

    @Test
    void plansApartDifferInSoManyNamedDecisions() {
        LeftHandLayer layer = layer(TUNE, 120);
        LeftHandPlan first = best(layer);
        for (int decisions = 1; decisions <= 8; decisions++) {
            Outcome.Found<LeftHandPlan> second = found(layer.apart(ask(), List.of(first), decisions));

            assertThat(second.proven()).isTrue();
            assertThat(differences(first, second.best())).isGreaterThanOrEqualTo(decisions);
            assertThat(second.best().cost(Taste.PLAIN)).isGreaterThanOrEqualTo(first.cost(Taste.PLAIN));
        }
        LeftHandPlan second = found(layer.apart(ask(), List.of(first), 3)).best();
        LeftHandPlan third =
                found(layer.apart(ask(), List.of(first, second), 3)).best();
        assertThat(differences(first, third)).isGreaterThanOrEqualTo(3);
        assertThat(differences(second, third)).isGreaterThanOrEqualTo(3);
    }

    private static long differences(LeftHandPlan one, LeftHandPlan other) {
        long count = 0;
        for (int i = 0; i < one.events().size(); i++)
            if (!one.events().get(i).buttons().equals(other.events().get(i).buttons())) count++;
        return count;
    }

    @Test
    void tooManyDifferencesAreRefusedAsAResult() {
        LeftHandLayer layer = layer(inFour(1, "C|N.C."), 8);

        Outcome<LeftHandPlan> outcome = layer.apart(ask(), List.of(best(layer)), 8);

        assertThat(((Outcome.Impossible<LeftHandPlan>) outcome)
                        .obstacles()
                        .get(0)
                        .code())
                .isEqualTo("no-plan-so-different");
        assertThatThrownBy(() -> layer.apart(ask(), List.of(), 1)).hasMessageContaining("from is empty");
        assertThatThrownBy(() -> layer.apart(ask(), List.of(best(layer)), 9)).hasMessageContaining("decisions is 9");
    }

    @Test
    void choicesAtAPlaceSayWhatEachWouldCost() {
        LeftHandLayer layer = layer(TUNE, 120);
        LeftHandPlan plan = best(layer);

        List<Choice> choices = layer.choicesAt(ask(), 1, at(0, 2));

        assertThat(choices)
                .extracting(choice -> choice.decision().value())
                .contains("G bass", "C bass", "E counterbass");
        assertThat(choices.get(0).extraCost()).isZero();
        for (Choice choice : choices) {
            Optional<BassButton> button = plan.events().stream()
                    .filter(event -> event.place().equals(at(0, 2)) && event.pass() == 1)
                    .map(event -> event.buttons().get(0))
                    .filter(own -> org.mantice.instrument.ButtonNames.of(own)
                            .equals(choice.decision().value()))
                    .findFirst();
            assertThat(button.isPresent()).isEqualTo(choice.extraCost() == 0);
        }
        LeftHandPlan forced = found(layer.best(ask(
                        new Lock.Buttons(OptionalInt.of(1), at(0, 2), Set.of(new BassButton(BassRow.COUNTERBASS, 0))))))
                .best();
        assertThat(choices)
                .filteredOn(choice -> choice.decision().value().equals("E counterbass"))
                .extracting(Choice::extraCost)
                .containsExactly(forced.cost(Taste.PLAIN) - plan.cost(Taste.PLAIN));
        assertThat(layer.choicesAt(ask(), 1, new WrittenPlace(0, MusicalTime.of(1, 16))))
                .isEmpty();
    }

    @Test
    void chordKeepsItsButtonsAsLongAsItLasts() {
        for (int buttons : List.of(48, 72, 120)) {
            LeftHandPlan plan = best(layer(inFour(1, "Fm6|Cm6|Bdim7|Bb6|G9|N.C."), buttons));
            for (int measure = 0; measure < 5; measure++) {
                Set<List<BassButton>> chords = new HashSet<>();
                for (LeftHandPlan.Event event : plan.events())
                    if (event.measure() == measure && event.place().offset().denominator() == 4)
                        chords.add(event.buttons());
                assertThat(chords).as("measure %s on %s", measure, buttons).hasSize(1);
            }
        }
    }

    @Test
    void instrumentWithoutBassAndTuneWithoutChordsLeaveTheHandSilent() {
        LeftHandLayer none = LeftHandLayer.of(
                TUNE,
                LeftHands.NO_VARIATION,
                LeftHands.accordion(StradellaBass.none()),
                LeftHands.player(BassMethod.THREE_TWO),
                LeftHands.RULES);
        LeftHandLayer bare = layer(inFour(1, "%|%"), 72);

        assertThat(best(none).events()).isEmpty();
        assertThat(none.remarks())
                .extracting(Sentence::english)
                .containsExactly("The left hand is silent: the instrument has no bass side.");
        assertThat(best(bare).events()).isEmpty();
        assertThat(bare.remarks())
                .extracting(Sentence::english)
                .containsExactly("The left hand is silent: no chords and no bass are written.");
        assertThat(bare.explain(best(bare), Taste.PLAIN).cost()).isZero();
        assertThat(bare.choicesAt(ask(), 1, at(0, 0))).isEmpty();
    }

    @Test
    void ruleThatMisbehavesIsNamedWithThePlace() {
        CountingRules rules = new CountingRules();
        rules.negative = true;

        assertThatThrownBy(() -> layer(TUNE, 72, rules))
                .isInstanceOf(RuleFailureException.class)
                .hasMessageContaining("left-hand.")
                .hasMessageContaining("measure 1");
    }

    @Test
    void ruleThatDoesNotStandByItsCostIsNamedWhenItExplains() {
        CountingRules rules = new CountingRules();
        LeftHandLayer layer = layer(TUNE, 72, rules);
        rules.lying = true;

        assertThatThrownBy(() -> layer.explain(best(layer), Taste.PLAIN))
                .isInstanceOf(RuleFailureException.class)
                .hasMessageContaining("but explains");
    }

    @Test
    void banGivesWayOnlyWhereNothingElseIsLeft() {
        LeftHandLayer free = layer(waltz(1, "C|G|C|N.C."), 12);
        LeftHandLayer banned = layer(
                waltz(1, "C|G|C|N.C."),
                12,
                new LeftHandRules(),
                new OnePack("test.bans", List.of(new NoFourthFinger(), new NoMajorButton())));

        LeftHandPlan plan = best(banned);

        assertThat(best(free).events()).anyMatch(event -> event.fingers().contains(4));
        assertThat(plan.events()).noneMatch(event -> event.fingers().contains(4));
        assertThat(plan.concessions()).hasSize(6).allMatch(one -> one.what() == GiveWay.LEGATO);
        assertThat(plan.concessions()).allMatch(one -> one.ruleId().equals("test.no-major"));
    }

    /** Stradling, "Notes on the Stradella bass", rev. 2014: 4 root bass, 3 chord, 2 fifth bass, 3 chord (O27). */
    @Test
    void rootFourChordThreeFifthTwoIsAStillHand() {
        LeftHandPlan plan = best(layer(inFour(1, "C|N.C."), 120));

        assertThat(words(plan)).isEqualTo("C bass 4 | C major 3 | G bass 2 | C major 3");
        assertThat(plan.events()).allMatch(event -> event.handColumn() == 0 && event.jump() == Jump.NONE);
    }

    @Test
    void handPlaceIsVisibleInEveryEvent() {
        LeftHandPlan plan = best(layer(waltz(1, "C|F|G|N.C."), 72));

        assertThat(new TreeSet<>(plan.events().stream()
                        .map(LeftHandPlan.Event::handColumn)
                        .toList()))
                .containsExactly(-1, 0, 1);
    }

    @Test
    void planOfAnotherLayerIsRefused() {
        LeftHandPlan other = best(layer(waltz(1, "C|F|G|N.C."), 72));
        LeftHandLayer layer = layer(waltz(1, "C|D|G|N.C."), 72);

        assertThatThrownBy(() -> layer.rescore(other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("event 3");
    }
}
