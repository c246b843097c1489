package org.mantice.layer.variation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.Bellows;
import org.mantice.instrument.BellowsEstimate;
import org.mantice.instrument.ReedBank;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.instrument.StradellaBass;
import org.mantice.instrument.TrebleKeyboard;
import org.mantice.layer.Choice;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.plan.VariationPlan;
import org.mantice.player.Taste;
import org.mantice.rule.PassChoice;
import org.mantice.rule.PassPair;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.RuleSet;
import org.mantice.rule.variation.VariationRules;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class VariationLayerTest {
    private static final RuleBook RULES = RuleBook.of(List.of(new VariationRules()));
    private static final Tune TUNE = Tunes.melody("4/4", "C4 q, E4 q, G4 q, C5 q | D5 h, C5 h");
    private static final RegisterSwitch CLARINET = register("clarinet", true, ReedBank.MIDDLE_8);
    private static final RegisterSwitch VIOLIN = register("violin", true, ReedBank.MIDDLE_8, ReedBank.TREMOLO_UPPER_8);
    private static final RegisterSwitch BASSOON = register("bassoon", true, ReedBank.LOW_16);
    private static final RegisterSwitch MASTER =
            register("master", true, ReedBank.LOW_16, ReedBank.MIDDLE_8, ReedBank.TREMOLO_UPPER_8, ReedBank.HIGH_4);

    @Test
    void passesOfEqualSoundAreAvoidedAndTheFirstIsPlain() {
        VariationPlan plan = best(layer(3, 53, 93, CLARINET, VIOLIN, MASTER), Question.best(Taste.PLAIN));

        assertThat(plan.passes())
                .extracting(VariationPlan.PassDecision::octave)
                .first()
                .isEqualTo(0);
        assertThat(plan.passes().get(0)).isNotEqualTo(plan.passes().get(1));
        assertThat(plan.passes().get(1).switchId())
                .isNotEqualTo(plan.passes().get(2).switchId());
    }

    @Test
    void withOneSwitchTheOctaveIsTheRemedyForContrast() {
        VariationPlan plan = best(layer(2, 53, 93, CLARINET), Question.best(Taste.PLAIN));

        assertThat(plan.passes()).extracting(VariationPlan.PassDecision::octave).containsExactly(0, 1);
    }

    @Test
    void brokenSwitchIsNeverChosen() {
        VariationLayer layer =
                layer(3, 53, 93, CLARINET, register("master", false, ReedBank.LOW_16, ReedBank.MIDDLE_8));

        Outcome.Found<VariationPlan> all =
                (Outcome.Found<VariationPlan>) layer.best(new Question(Taste.PLAIN, List.of(), 1000, () -> false));

        assertThat(all.plans()).allSatisfy(plan -> assertThat(plan.passes())
                .noneMatch(pass -> pass.switchId().equals("master")));
    }

    @Test
    void switchThatTakesTooLongToReachIsNotChangedBetweenPasses() {
        RegisterSwitch far = new RegisterSwitch("far", "far", Set.of(ReedBank.LOW_16), true, 10_000);
        VariationLayer layer = layer(2, 53, 93, CLARINET, far);

        Outcome.Found<VariationPlan> all =
                (Outcome.Found<VariationPlan>) layer.best(new Question(Taste.PLAIN, List.of(), 1000, () -> false));

        assertThat(all.plans())
                .noneMatch(plan -> plan.passes().get(0).switchId().equals("clarinet")
                        && plan.passes().get(1).switchId().equals("far"));
        assertThat(all.plans()).anyMatch(plan -> plan.passes().get(0).switchId().equals("far"));
    }

    @Test
    void kBestEqualsSortedBruteForce() {
        VariationLayer layer = layer(3, 55, 90, CLARINET, VIOLIN, BASSOON);
        Outcome.Found<VariationPlan> all =
                (Outcome.Found<VariationPlan>) layer.best(new Question(Taste.PLAIN, List.of(), 10_000, () -> false));

        List<Long> brute = bruteForceCosts(3, List.of(CLARINET, VIOLIN, BASSOON));

        assertThat(all.plans()).extracting(plan -> plan.cost(Taste.PLAIN)).containsExactlyElementsOf(brute);
        assertThat(all.plans()).doesNotHaveDuplicates();
    }

    /** C4 to D5: octaves 0 (60 to 74) and 1 (72 to 86) fit 55 to 90, an octave down does not. */
    private static List<Long> bruteForceCosts(int passes, List<RegisterSwitch> switches) {
        List<List<PassChoice>> sequences = List.of(List.of());
        for (int pass = 1; pass <= passes; pass++) {
            List<List<PassChoice>> longer = new ArrayList<>();
            for (List<PassChoice> sequence : sequences)
                for (int octave = 0; octave <= 1; octave++)
                    for (RegisterSwitch register : switches) {
                        List<PassChoice> next = new ArrayList<>(sequence);
                        next.add(new PassChoice(pass, passes, register, octave, 60 + 12 * octave, 74 + 12 * octave));
                        longer.add(next);
                    }
            sequences = longer;
        }
        return sequences.stream()
                .map(VariationLayerTest::price)
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    private static long price(List<PassChoice> sequence) {
        long total = 0;
        for (Rule<PassChoice> rule : RULES.rules(RuleSet.REPEAT_VARIATION, PassChoice.class))
            for (PassChoice choice : sequence) total += rule.cost(choice) * 1000;
        for (Rule<PassPair> rule : RULES.rules(RuleSet.REPEAT_VARIATION, PassPair.class))
            for (int i = 1; i < sequence.size(); i++)
                total += rule.cost(new PassPair(sequence.get(i - 1), sequence.get(i))) * 1000;
        return total;
    }

    @Test
    void explanationSumsToTheCostUnderAnyTaste() {
        VariationLayer layer = layer(3, 53, 93, CLARINET, VIOLIN, MASTER);
        Taste taste = Taste.PLAIN.with("variation.growing", 333).with("variation.plain-first", 0);
        for (VariationPlan plan :
                ((Outcome.Found<VariationPlan>) layer.best(new Question(taste, List.of(), 50, () -> false))).plans()) {
            Explanation explanation = layer.explain(plan, taste);
            assertThat(explanation.cost()).isEqualTo(plan.cost(taste));
            assertThat(layer.rescore(plan)).isEqualTo(plan);
        }
    }

    @Test
    void locksHoldAndContradictionsAreNamed() {
        VariationLayer layer = layer(2, 53, 93, CLARINET, VIOLIN);
        Lock violinFirst = new Lock.Register(OptionalInt.of(1), "violin");
        Lock clarinetAlways = new Lock.Register(OptionalInt.empty(), "clarinet");
        Lock octave = new Lock.Octave(OptionalInt.of(2), 1);

        VariationPlan kept = best(layer, new Question(Taste.PLAIN, List.of(violinFirst, octave), 1, () -> false));
        Outcome<VariationPlan> torn =
                layer.best(new Question(Taste.PLAIN, List.of(octave, violinFirst, clarinetAlways), 1, () -> false));

        assertThat(kept.pass(1).switchId()).isEqualTo("violin");
        assertThat(kept.pass(2).octave()).isEqualTo(1);
        assertThat(((Outcome.Impossible<VariationPlan>) torn).obstacles())
                .singleElement()
                .satisfies(obstacle -> {
                    assertThat(obstacle.code()).isEqualTo("locks-contradict");
                    assertThat(obstacle.message())
                            .contains("violin in pass 1")
                            .contains("clarinet")
                            .doesNotContain("octave");
                });
    }

    @Test
    void noteOffTheKeyboardIsNamedWithTheNearestKeys() {
        Outcome<VariationPlan> outcome = layer(1, 62, 74, CLARINET).best(Question.best(Taste.PLAIN));

        assertThat(((Outcome.Impossible<VariationPlan>) outcome).obstacles())
                .singleElement()
                .satisfies(obstacle -> {
                    assertThat(obstacle.code()).isEqualTo("note-off-keyboard");
                    assertThat(obstacle.message()).contains("C4");
                    assertThat(obstacle.remedies())
                            .anyMatch(remedy -> remedy.english().contains("spans 15 keys"));
                });
        Outcome<VariationPlan> wider = layer(1, 62, 77, CLARINET).best(Question.best(Taste.PLAIN));
        assertThat(((Outcome.Impossible<VariationPlan>) wider)
                        .obstacles()
                        .get(0)
                        .remedies())
                .first()
                .hasToString("Another key: transpose by +2 semitones.");
    }

    @Test
    void secondQuestionCallsNoRule() {
        AtomicInteger calls = new AtomicInteger();
        VariationLayer layer = new VariationLayer(
                performance(3), accordion(53, 93, CLARINET, VIOLIN), RuleBook.of(List.of(counting(calls))));
        layer.best(Question.best(Taste.PLAIN));
        int before = calls.get();

        layer.best(new Question(
                Taste.PLAIN.with("count.calls", 10), List.of(new Lock.Octave(OptionalInt.of(2), 1)), 5, () -> false));

        assertThat(before).isPositive();
        assertThat(calls).hasValue(before);
    }

    @Test
    void choicesAtAPassNameEveryPossibilityWithItsExtraCost() {
        VariationLayer layer = layer(2, 53, 93, CLARINET, VIOLIN);

        List<Choice> choices = layer.choicesAt(Question.best(Taste.PLAIN), 2, new WrittenPlace(0, MusicalTime.ZERO));

        assertThat(choices).hasSize(4).first().satisfies(choice -> assertThat(choice.extraCost())
                .isZero());
        long optimum = best(layer, Question.best(Taste.PLAIN)).cost(Taste.PLAIN);
        for (Choice choice : choices) {
            String register = choice.decision().value().split(",")[0];
            int octave = Integer.parseInt(choice.decision().value().replaceAll(".*octave ", ""));
            List<Lock> locks =
                    List.of(new Lock.Register(OptionalInt.of(2), register), new Lock.Octave(OptionalInt.of(2), octave));
            VariationPlan locked = best(layer, new Question(Taste.PLAIN, locks, 1, () -> false));
            assertThat(choice.extraCost()).isEqualTo(locked.cost(Taste.PLAIN) - optimum);
        }
    }

    @Test
    void apartDiffersInAsManyDecisionsAsAsked() {
        VariationLayer layer = layer(3, 53, 93, CLARINET, VIOLIN, MASTER);
        VariationPlan best = best(layer, Question.best(Taste.PLAIN));

        VariationPlan other =
                ((Outcome.Found<VariationPlan>) layer.apart(Question.best(Taste.PLAIN), List.of(best), 3)).best();

        long differing = 0;
        for (int i = 0; i < 3; i++) {
            if (!best.passes().get(i).switchId().equals(other.passes().get(i).switchId())) differing++;
            if (best.passes().get(i).octave() != other.passes().get(i).octave()) differing++;
        }
        assertThat(differing).isGreaterThanOrEqualTo(3);
    }

    private static RuleProvider counting(AtomicInteger calls) {
        Rule<PassPair> rule = new Rule<>() {
            @Override
            public RuleInfo info() {
                return RuleInfo.of("count.calls", RuleSet.REPEAT_VARIATION, "estimate");
            }

            @Override
            public Class<PassPair> reach() {
                return PassPair.class;
            }

            @Override
            public long cost(PassPair step) {
                return calls.incrementAndGet() % 7;
            }

            @Override
            public Reasons explain(PassPair step) {
                return Reasons.NOTHING;
            }
        };
        return new RuleProvider() {
            @Override
            public String id() {
                return "counting";
            }

            @Override
            public String version() {
                return "1";
            }

            @Override
            public String bundle() {
                return "none";
            }

            @Override
            public List<Rule<?>> rules() {
                return List.of(rule);
            }
        };
    }

    private static VariationPlan best(VariationLayer layer, Question question) {
        return ((Outcome.Found<VariationPlan>) layer.best(question)).best();
    }

    private static VariationLayer layer(int times, int low, int high, RegisterSwitch... switches) {
        return new VariationLayer(performance(times), accordion(low, high, switches), RULES);
    }

    private static Performance performance(int times) {
        return Performer.perform(
                TUNE,
                SettingsBuilder.of(TUNE).beatsPerMinute(60).timesThrough(times).build());
    }

    private static RegisterSwitch register(String id, boolean works, ReedBank... banks) {
        return new RegisterSwitch(id, id, Set.of(banks), works, 400);
    }

    private static Accordion accordion(int low, int high, RegisterSwitch... switches) {
        return new Accordion(
                "test",
                "Test",
                new TrebleKeyboard(low, high, 20_000, List.of(switches)),
                StradellaBass.ofSize(72),
                new Bellows(
                        List.of(new Bellows.OpeningVolume(0, 0), new Bellows.OpeningVolume(300, 20_000)),
                        200,
                        300,
                        200,
                        BellowsEstimate.appetites(2, 6),
                        50,
                        false));
    }

    /** Common practice, no source. */
    @Test
    void passesGrowFromOneReedToAllAtTheWrittenPitch() {
        RegisterSwitch piccolo = register("piccolo", true, ReedBank.HIGH_4);

        VariationPlan three = best(layer(3, 53, 93, piccolo, MASTER, VIOLIN, CLARINET), Question.best(Taste.PLAIN));

        assertThat(three.passes())
                .extracting(VariationPlan.PassDecision::switchId)
                .containsExactly("clarinet", "violin", "master");
    }
}
