package org.mantice.layer.righthand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.mantice.layer.Choice;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleFailureException;
import org.mantice.performance.Performance;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.Sentence;
import org.mantice.player.Taste;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.RuleSet;
import org.mantice.rule.righthand.RightHandRules;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

class RightHandLayerTest {
    private static final String TUNE = "E4 G4 C5 B4 A4 F4 D4 E4 F4 A4 G4 E4 C4 r D4 B3 C4+E4 D4+F4 C4";

    private static RightHandLayer layer(String text) {
        return Hands.layer(Hands.performance(text, 300), Instruments.WIDE, 98, Hands.book(new RightHandRules()));
    }

    private static List<RightHandPlan> plans(Outcome<RightHandPlan> outcome) {
        return ((Outcome.Found<RightHandPlan>) outcome).plans();
    }

    private static Obstacle obstacle(Outcome<RightHandPlan> outcome) {
        return ((Outcome.Impossible<RightHandPlan>) outcome).obstacles().get(0);
    }

    private static Question asking(int count, Lock... locks) {
        return new Question(Taste.PLAIN, List.of(locks), count, () -> false);
    }

    private static Lock finger(int measure, int eighth, int note, int finger) {
        return new Lock.Finger(OptionalInt.empty(), new WrittenPlace(measure, MusicalTime.of(eighth, 8)), note, finger);
    }

    @Test
    void bestPlansComeInOrderAndNoneTwice() {
        List<RightHandPlan> plans = plans(layer(TUNE).best(asking(50)));

        assertThat(plans).hasSize(50).doesNotHaveDuplicates();
        assertThat(plans).extracting(plan -> plan.cost(Taste.PLAIN)).isSorted();
        assertThat(plans(layer(TUNE).best(asking(7)))).isEqualTo(plans.subList(0, 7));
    }

    @Test
    void theExplanationAddsUpToThePlansCost() {
        RightHandLayer layer = layer(TUNE);
        Taste taste = Taste.PLAIN.with("fingering.weak-finger", 3_500).with("fingering.reach", 0);
        for (RightHandPlan plan : plans(layer.best(new Question(taste, List.of(), 5, () -> false)))) {
            Explanation explanation = layer.explain(plan, taste);

            assertThat(explanation.cost()).isEqualTo(plan.cost(taste));
            assertThat(explanation.key()).isEqualTo("fingering-span");
            assertThat(explanation.children())
                    .hasSize(new RightHandRules().rules().size());
            assertThat(explanation.children())
                    .flatExtracting(Explanation::children)
                    .allMatch(place -> place.place().startsWith("pass 1, measure ")
                            && !place.facts().isEmpty());
        }
    }

    @Test
    void pricingADecidedPlanAnewGivesTheSamePlan() {
        RightHandLayer layer = layer(TUNE);

        for (RightHandPlan plan : plans(layer.best(asking(20))))
            assertThat(layer.rescore(plan)).isEqualTo(plan);
    }

    @Test
    void aPlanOfOtherMusicIsRefused() {
        RightHandPlan plan = plans(layer("C4 D4 E4").best(asking(1))).get(0);

        assertThatThrownBy(() -> layer("C4 D4").rescore(plan))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 events");
        assertThatThrownBy(() -> layer("C4 D4 F4").rescore(plan))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("keys of event 2");
    }

    @Test
    void aNewTasteOrLockCallsNoRule() {
        Counting rules = new Counting();
        RightHandLayer layer = Hands.layer(
                Hands.performance(TUNE, 300), Instruments.WIDE, 98, Hands.book(new RightHandRules(), rules));
        layer.best(asking(1));
        long before = rules.calls.get();
        long forOnePlan = callsFor(rules, () -> layer.best(asking(1)));

        long withTaste = callsFor(
                rules,
                () -> layer.best(new Question(
                        Taste.PLAIN.with("fingering.place-change", 300), List.of(finger(0, 0, 0, 3)), 1, () -> false)));

        assertThat(before).isGreaterThan(500);
        assertThat(forOnePlan).isEqualTo(0);
        assertThat(withTaste).isEqualTo(0);
    }

    private static long callsFor(Counting rules, Runnable run) {
        long before = rules.calls.get();
        run.run();
        return rules.calls.get() - before;
    }

    @Test
    void locksHold() {
        RightHandPlan free = plans(layer(TUNE).best(asking(1))).get(0);
        int other = free.events().get(2).fingers().get(0) == 4 ? 5 : 4;

        List<RightHandPlan> locked = plans(layer(TUNE).best(asking(10, finger(0, 2, 0, other), finger(2, 0, 1, 4))));

        assertThat(locked).allMatch(plan -> plan.events().get(2).fingers().get(0) == other);
        assertThat(locked).allMatch(plan -> plan.events().get(15).fingers().get(1) == 4);
        assertThat(locked.get(0).cost(Taste.PLAIN)).isGreaterThanOrEqualTo(free.cost(Taste.PLAIN));
    }

    @Test
    void contradictoryLocksAreNamed() {
        // The chord stands on the first eighth of the third measure; a lower key cannot have a higher finger.
        Obstacle found = obstacle(layer(TUNE)
                .best(asking(1, finger(0, 0, 0, 1), finger(2, 0, 0, 4), finger(0, 3, 0, 2), finger(2, 0, 1, 2))));

        assertThat(found.code()).isEqualTo("locks-contradict");
        assertThat(found.message())
                .contains("finger 4 on note 1 at measure 3")
                .contains("finger 2 on note 2 at measure 3")
                .doesNotContain("measure 1");
    }

    @Test
    void aLockOnANoteThatIsNotThereIsNamed() {
        assertThat(obstacle(layer(TUNE).best(asking(1, finger(9, 0, 0, 1)))).code())
                .isEqualTo("lock-without-note");
        assertThat(obstacle(layer(TUNE).best(asking(1, finger(0, 0, 1, 1)))).code())
                .isEqualTo("lock-without-note");
    }

    @Test
    void notesOffTheKeyboardAreNamedWithWhatWouldHelp() {
        Performance performance = Hands.performance("E4 F4 D7 E4", 300);
        RightHandLayer layer =
                Hands.layer(performance, Instruments.keyboard(53, 93), 98, Hands.book(new RightHandRules()));

        Obstacle found = obstacle(layer.best(asking(1)));

        assertThat(found.code()).isEqualTo("note-off-keyboard");
        assertThat(found.message()).contains("D7 (pass 1, measure 1, beat 2)");
        assertThat(found.remedies())
                .extracting(Sentence::english)
                .containsExactly(
                        "Transpose by 5 semitones down.", "Take an instrument whose right hand has the keys E4 to D7.");
        assertThat(layer.choicesAt(asking(1), 1, new WrittenPlace(0, MusicalTime.ZERO)))
                .isEmpty();
    }

    @Test
    void aTuneThatFitsAnOctaveLowerIsToldSo() {
        RightHandLayer layer = Hands.layer(
                Hands.performance("C6 D6 E7", 300), Instruments.keyboard(53, 93), 98, Hands.book(new RightHandRules()));

        assertThat(obstacle(layer.best(asking(1))).remedies()).first().hasToString("Play pass 1 1 octave lower.");
    }

    @Test
    void sixKeysAtOnceAreMoreThanAHandHas() {
        Obstacle found = obstacle(layer("C4 C4+D4+E4+F4+G4+A4 C4").best(asking(1)));

        assertThat(found.code()).isEqualTo("more-keys-than-fingers");
        assertThat(found.message()).contains("pass 1, measure 1, beat 1+1/8");
    }

    @Test
    void plansApartDifferInAsManyDecisionsAsAsked() {
        RightHandLayer layer = layer(TUNE);
        RightHandPlan best = plans(layer.best(asking(1))).get(0);

        Outcome.Found<RightHandPlan> apart = (Outcome.Found<RightHandPlan>) layer.apart(asking(1), List.of(best), 4);

        assertThat(apart.proven()).isTrue();
        assertThat(differences(apart.best(), best)).isGreaterThanOrEqualTo(4);
        // The next plans in order that come before it differ less.
        RightHandPlan firstFarEnough = plans(layer.best(asking(20_000))).stream()
                .filter(plan -> differences(plan, best) >= 4)
                .findFirst()
                .orElseThrow();
        assertThat(apart.best().cost(Taste.PLAIN)).isEqualTo(firstFarEnough.cost(Taste.PLAIN));
    }

    @Test
    void severalPlansApartAreApartFromEachOther() {
        RightHandLayer layer = layer(TUNE);
        RightHandPlan best = plans(layer.best(asking(1))).get(0);

        List<RightHandPlan> apart = new ArrayList<>(plans(layer.apart(asking(3), List.of(best), 3)));
        apart.add(best);

        for (RightHandPlan one : apart)
            for (RightHandPlan other : apart)
                if (one != other) assertThat(differences(one, other)).isGreaterThanOrEqualTo(3);
    }

    private static int differences(RightHandPlan one, RightHandPlan other) {
        int count = 0;
        for (int index = 0; index < one.events().size(); index++) {
            if (!one.events()
                    .get(index)
                    .fingers()
                    .equals(other.events().get(index).fingers())) count++;
            if (index > 0 && changes(one, index) != changes(other, index)) count++;
        }
        return count;
    }

    private static boolean changes(RightHandPlan plan, int index) {
        return plan.events().get(index).handPlace()
                != plan.events().get(index - 1).handPlace();
    }

    @Test
    void choicesSayWhatAnotherFingerWouldCost() {
        RightHandLayer layer = layer(TUNE);
        RightHandPlan best = plans(layer.best(asking(1))).get(0);

        List<Choice> choices = layer.choicesAt(asking(1), 1, new WrittenPlace(0, MusicalTime.of(2, 8)));

        assertThat(choices).extracting(Choice::extraCost).isSorted();
        assertThat(choices).filteredOn(choice -> choice.extraCost() == 0).hasSizeGreaterThanOrEqualTo(2);
        for (Choice choice : choices) {
            if (choice.decision().kind() != org.mantice.plan.Decision.Kind.FINGER) continue;
            Lock lock = finger(0, 2, 0, Integer.parseInt(choice.decision().value()));
            assertThat(plans(layer.best(asking(1, lock))).get(0).cost(Taste.PLAIN) - best.cost(Taste.PLAIN))
                    .as("%s", choice)
                    .isEqualTo(choice.extraCost());
        }
    }

    @Test
    void aSlurredLeapBeyondTheHandGivesLegatoAwayAndSaysWhere() {
        RightHandPlan plan = plans(layer("(C4 C6) D4").best(asking(1))).get(0);

        assertThat(plan.concessions()).hasSize(1);
        assertThat(plan.concessions().get(0).ruleId()).isEqualTo("fingering.legato");
        assertThat(plan.events().get(1).move()).isEqualTo(HandMove.LIFT);
    }

    @Test
    void aCancelledQuestionStops() {
        assertThatThrownBy(() -> layer(TUNE).best(new Question(Taste.PLAIN, List.of(), 1, () -> true)))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void aRuleThatMisbehavesIsNamedWithThePlace() {
        RuleProvider broken = new Foreign() {
            @Override
            public long cost(FingerPair step) {
                return step.to().lowestKey() == 64 ? -1 : 0;
            }
        };

        assertThatThrownBy(
                        () -> Hands.layer(Hands.performance("C4 D4 E4", 300), Instruments.WIDE, 98, Hands.book(broken)))
                .isInstanceOf(RuleFailureException.class)
                .hasMessageContaining("foreign.pair at pass 1, measure 1, beat 2: gave the cost -1");
    }

    @Test
    void everyPlanIsPlayable() {
        for (String text : List.of(TUNE, "C4_ E4 C4_+G4 E4 C4+E4+G4+C5 D4+G4 r C6+E6 C4+D4+E4+F4+G4"))
            for (RightHandPlan plan : plans(layer(text).best(asking(200))))
                for (RightHandPlan.Event event : plan.events()) {
                    assertThat(event.fingers()).doesNotHaveDuplicates().isSorted();
                    assertThat(event.fingers()).allMatch(finger -> finger >= 1 && finger <= 5);
                    assertThat(event.fingers()).hasSameSizeAs(event.keys());
                }
    }

    @Test
    void oneNoteAloneHasAPlan() {
        assertThat(plans(layer("F#4").best(asking(3)))).hasSize(3);
    }

    /** A rule of somebody else's. */
    private abstract static class Foreign implements RuleProvider, Rule<FingerPair> {
        @Override
        public String id() {
            return "foreign";
        }

        @Override
        public String version() {
            return "1";
        }

        @Override
        public String bundle() {
            return "foreign";
        }

        @Override
        public List<Rule<?>> rules() {
            return List.of(this);
        }

        @Override
        public RuleInfo info() {
            return RuleInfo.of("foreign.pair", RuleSet.FINGERING_SPAN, "estimate");
        }

        @Override
        public Class<FingerPair> reach() {
            return FingerPair.class;
        }

        @Override
        public Reasons explain(FingerPair step) {
            return Reasons.of(cost(step));
        }
    }

    /** Counts how often it is asked. */
    private static final class Counting extends Foreign {
        private final AtomicLong calls = new AtomicLong();

        @Override
        public long cost(FingerPair step) {
            calls.incrementAndGet();
            return step.to().highestFinger() == 3 ? 7 : 0;
        }
    }
}
