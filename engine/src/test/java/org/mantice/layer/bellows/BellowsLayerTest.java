package org.mantice.layer.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.BassRow;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.layer.bellows.StrokeSolver.Strokes;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.BellowsPlan.Direction;
import org.mantice.plan.Concession;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.rule.GiveWay;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.Step;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.bellows.BellowsRules;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class BellowsLayerTest {
    private static final String EIGHT =
            "C4 h, E4 q | G4 h. | A4 h, F4 q | D4 h. | E4 h, G4 q | F4 h, D4 q | B3 h, D4 q | C4 h.";
    /** Small and hungry: a stroke of four slow measures is beyond it. */
    private static final String SMALL = "student-26-key-48-bass";

    private static Tune waltz(String melody) {
        return Tunes.melody("3/4", melody);
    }

    private static Question ask(int count, Lock... locks) {
        return new Question(Taste.PLAIN, List.of(locks), count, () -> false);
    }

    private static Outcome.Found<BellowsPlan> found(Outcome<BellowsPlan> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Found.class);
        return (Outcome.Found<BellowsPlan>) outcome;
    }

    private static BellowsPlan best(Scene scene, Lock... locks) {
        return found(scene.layer().best(ask(1, locks))).best();
    }

    private static List<List<WrittenPlace>> turns(List<BellowsPlan> plans) {
        return plans.stream()
                .map(plan ->
                        plan.strokes().stream().map(BellowsPlan.Stroke::place).toList())
                .toList();
    }

    private static void assertSameAsBruteForce(Scene scene, Taste taste, int count, Lock... locks) {
        int start = scene.accordion().bellows().comfortableMillilitres() / 20;
        Ground ground = scene.ground();
        List<Strokes> all = new BruteForce(scene, taste, List.of(locks), start).all();
        Outcome<BellowsPlan> outcome =
                scene.layerFrom(start).best(new Question(taste, List.of(locks), count, () -> false));
        if (all.isEmpty()) {
            assertThat(outcome).isInstanceOf(Outcome.Impossible.class);
            return;
        }
        long least = all.get(0).concessions();
        List<Strokes> expected = all.stream()
                .filter(plan -> plan.concessions() == least)
                .limit(count)
                .toList();
        List<BellowsPlan> plans = found(outcome).plans();
        assertThat(found(outcome).proven()).isTrue();
        assertThat(plans.stream().map(plan -> plan.cost(taste)).toList())
                .isEqualTo(expected.stream().map(Strokes::cost).toList());
        assertThat(plans.stream()
                        .map(plan -> plan.strokes().stream()
                                .map(BellowsPlan.Stroke::onset)
                                .toList())
                        .toList())
                .isEqualTo(expected.stream()
                        .map(plan -> plan.places().stream()
                                .filter(place -> place != ground.last())
                                .map(place -> ground.place(place).onset())
                                .toList())
                        .toList());
    }

    @Test
    void searchEqualsBruteForceOnSeededTunesTiesIncluded() {
        Random random = new Random(11);
        for (int round = 0; round < 25; round++) {
            StringBuilder melody = new StringBuilder();
            for (int measure = 0; measure < 6; measure++) {
                if (measure > 0) melody.append(" | ");
                if (measure == 3) melody.append("@start ");
                melody.append(
                        switch (random.nextInt(5)) {
                            case 0 -> "C4 h, E4 q";
                            case 1 -> "G4 q (, A4 q, F4 q )";
                            case 2 -> "D4 h.";
                            case 3 -> "R q, E4 h breath";
                            default -> "C4 q stacc, C4 q stacc, C4 q";
                        });
            }
            int tempo = 20 + random.nextInt(120);
            Scene scene = Scene.of(waltz(melody.toString()), tempo, 1).on(SMALL, "bassoon");
            Taste taste = random.nextBoolean()
                    ? Taste.PLAIN
                    : Taste.PLAIN.with("bellows.opening", 3_000).with("bellows.place", 500);
            assertSameAsBruteForce(scene, taste, 1 + random.nextInt(8));
        }
    }

    @Test
    void searchEqualsBruteForceUnderLocks() {
        Scene scene = Scene.of(waltz(EIGHT), 90, 1).on(SMALL, "bassoon");

        assertSameAsBruteForce(scene, Taste.PLAIN, 5, turnAt(2, 0, true), turnAt(4, 0, false));
    }

    @Test
    void searchEqualsBruteForceWhereSlursMustGiveWay() {
        Scene scene = Scene.of(waltz("C4 h (, E4 q | G4 h. | A4 h, F4 q | D4 h. | E4 h, G4 q | C4 h. )"), 30, 1)
                .on(SMALL, "bassoon");

        assertSameAsBruteForce(scene, Taste.PLAIN, 4);
        assertThat(best(scene).concessions()).extracting(Concession::what).contains(GiveWay.TURN_IN_SLUR);
    }

    @Test
    void firstOfManyIsTheBestAndOneMoreChangesNone() {
        Scene scene = Scene.of(waltz(EIGHT), 120, 2);
        List<BellowsPlan> eight = found(scene.layer().best(ask(8))).plans();

        assertThat(eight).hasSize(8).doesNotHaveDuplicates();
        assertThat(turns(eight)).doesNotHaveDuplicates();
        assertThat(eight).isSortedAccordingTo((a, b) -> Long.compare(a.cost(Taste.PLAIN), b.cost(Taste.PLAIN)));
        assertThat(found(scene.layer().best(ask(3))).plans()).isEqualTo(eight.subList(0, 3));
    }

    /** O48, derived from conservation of air. */
    @Test
    void signedAirAddsUpAndStaysBetweenClosedAndFull() {
        for (int tempo : List.of(25, 40, 60, 90, 140)) {
            Scene scene = Scene.of(waltz(EIGHT), tempo, 3).on(SMALL, "bassoon");
            BellowsPlan plan = best(scene);
            int level = plan.strokes().get(0).startMillilitres();
            for (BellowsPlan.Stroke stroke : plan.strokes()) {
                assertThat(stroke.startMillilitres()).isEqualTo(level);
                level += stroke.direction() == Direction.OUT ? stroke.airMillilitres() : -stroke.airMillilitres();
                assertThat(stroke.endMillilitres()).isEqualTo(level);
                assertThat(level).isBetween(0, scene.accordion().bellows().fullMillilitres());
            }
            assertThat(plan.strokes().stream()
                            .mapToInt(BellowsPlan.Stroke::airMillilitres)
                            .sum())
                    .isEqualTo(scene.ground().air.total());
        }
    }

    @Test
    void strokesAlternateAndTheFirstGoesOut() {
        BellowsPlan plan = best(Scene.of(waltz(EIGHT), 60, 3));

        for (BellowsPlan.Stroke stroke : plan.strokes())
            assertThat(stroke.direction()).isEqualTo(stroke.index() % 2 == 0 ? Direction.OUT : Direction.IN);
    }

    @Test
    void planFactorIsTheLargestThatStaysWithinLimits() {
        Scene scene = Scene.of(waltz(EIGHT), 60, 2);
        BellowsPlan plan = best(scene);

        assertThat(fits(plan, scene, plan.planFactorPerMille())).isTrue();
        assertThat(fits(plan, scene, plan.planFactorPerMille() + 1)).isFalse();
    }

    private static boolean fits(BellowsPlan plan, Scene scene, int perMille) {
        long level = plan.strokes().get(0).startMillilitres() * 1_000L;
        for (BellowsPlan.Stroke stroke : plan.strokes()) {
            long air = (long) stroke.airMillilitres() * perMille;
            level += stroke.direction() == Direction.OUT ? air : -air;
            if (level < 0 || level > scene.accordion().bellows().fullMillilitres() * 1_000L) return false;
        }
        return true;
    }

    @Test
    void strokeOneMilliBeatSlowerThanItsSlowestTempoDoesNotFit() {
        Scene scene = Scene.of(waltz(EIGHT), 60, 2);
        long tempo = scene.performance().settings().tempo().milliBeatsPerMinute();
        for (BellowsPlan.Stroke stroke : best(scene).strokes()) {
            long room = stroke.airMillilitres() + stroke.marginMillilitres();
            long slowest = stroke.slowestTempoMilli();
            assertThat(stroke.airMillilitres() * tempo).isLessThanOrEqualTo(room * slowest);
            assertThat(stroke.airMillilitres() * tempo).isGreaterThan(room * (slowest - 1));
        }
    }

    /** O46: least turns do not fall when all air grows; slower by one factor is more air everywhere. */
    @Test
    void slowerNeverNeedsFewerTurns() {
        Taste fewest = Taste.PLAIN.with("bellows.turns", 100_000);
        for (String rule : List.of("place", "opening", "stroke", "evenness", "stolen-time", "pickup"))
            fewest = fewest.with("bellows." + rule, 0);
        int before = 0;
        for (int tempo : List.of(240, 200, 160, 120, 100, 80, 60, 40)) {
            Scene scene = Scene.of(waltz(EIGHT), tempo, 2);
            int turns = found(scene.layerFrom(0).best(new Question(fewest, List.of(), 1, () -> false)))
                    .best()
                    .turns();
            assertThat(turns).isGreaterThanOrEqualTo(before);
            before = turns;
        }
        assertThat(before).isGreaterThan(0);
    }

    @Test
    void newTasteAndNewLockCallNoRule() {
        int[] calls = {0};
        Scene scene = Scene.of(waltz(EIGHT), 60, 2).with(RuleBook.of(List.of(new Counting(calls))));
        BellowsLayer layer = scene.layer();
        int made = calls[0];

        layer.best(ask(3));
        layer.best(new Question(Taste.PLAIN.with("bellows.turns", 5_000), List.of(turnAt(4, 0, true)), 1, () -> false));
        layer.choicesAt(ask(1), 1, new WrittenPlace(4, MusicalTime.ZERO));
        layer.apart(ask(1), List.of(found(layer.best(ask(1))).best()), 2);

        assertThat(made).isPositive();
        assertThat(calls[0]).isEqualTo(made);
    }

    /** Our rules, counted. */
    private record Counting(int[] calls) implements RuleProvider {
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
            return new BellowsRules().bundle();
        }

        @Override
        public List<Rule<?>> rules() {
            List<Rule<?>> rules = new ArrayList<>();
            for (Rule<?> rule : new BellowsRules().rules()) rules.add(new Counted<>(rule, calls));
            return rules;
        }
    }

    private record Counted<S extends Step>(Rule<S> rule, int[] calls) implements Rule<S> {
        @Override
        public RuleInfo info() {
            return rule.info();
        }

        @Override
        public Class<S> reach() {
            return rule.reach();
        }

        @Override
        public long cost(S step) {
            calls[0]++;
            return rule.cost(step);
        }

        @Override
        public Reasons explain(S step) {
            return rule.explain(step);
        }
    }

    @Test
    void rulesInAnotherOrderGiveTheSamePlan() {
        List<Rule<?>> turned = new ArrayList<>(new BellowsRules().rules());
        Collections.reverse(turned);
        Scene scene = Scene.of(waltz(EIGHT), 60, 2);
        RuleProvider provider = new RuleProvider() {
            @Override
            public String id() {
                return "turned";
            }

            @Override
            public String version() {
                return "1";
            }

            @Override
            public String bundle() {
                return new BellowsRules().bundle();
            }

            @Override
            public List<Rule<?>> rules() {
                return turned;
            }
        };

        assertThat(best(scene.with(RuleBook.of(List.of(provider))))).isEqualTo(best(scene));
    }

    @Test
    void explanationAddsUpToTheCostAndRescoringGivesTheSamePlan() {
        Scene scene = Scene.of(waltz(EIGHT), 60, 2).on(SMALL, "bassoon");
        Taste taste = Taste.PLAIN.with("bellows.place", 1_700).with("bellows.evenness", 0);
        BellowsLayer layer = scene.layer();
        BellowsPlan plan = found(layer.best(new Question(taste, List.of(), 1, () -> false)))
                .best();

        assertThat(layer.explain(plan, taste).cost()).isEqualTo(plan.cost(taste));
        assertThat(layer.rescore(plan)).isEqualTo(plan);
    }

    private static Lock.Turn turnAt(int measure, int quarter, boolean turn) {
        return new Lock.Turn(OptionalInt.empty(), new WrittenPlace(measure, MusicalTime.of(quarter, 4)), turn);
    }

    @Test
    void lockWithoutAPassHoldsEachTimeThrough() {
        BellowsPlan plan = best(Scene.of(waltz(EIGHT), 120, 3), turnAt(3, 0, true), turnAt(4, 0, false));

        assertThat(plan.strokes().stream()
                        .filter(stroke -> stroke.place().measure() == 3)
                        .map(BellowsPlan.Stroke::pass))
                .containsExactly(1, 2, 3);
        assertThat(plan.strokes()).noneMatch(stroke -> stroke.place().measure() == 4);
    }

    @Test
    void contradictoryLocksAreNamed() {
        Scene scene = Scene.of(waltz(EIGHT), 120, 1);

        Outcome<BellowsPlan> outcome =
                scene.layer().best(ask(1, turnAt(2, 0, true), turnAt(4, 0, true), turnAt(4, 0, false)));

        assertThat(outcome).isInstanceOfSatisfying(Outcome.Impossible.class, impossible -> assertThat(
                        impossible.obstacles().toString())
                .contains("locks-contradict", "a turn at measure 5", "no turn at measure 5")
                .doesNotContain("measure 3"));
    }

    @Test
    void turnDemandedInsideANoteIsNamed() {
        Outcome<BellowsPlan> outcome = Scene.of(waltz(EIGHT), 120, 1).layer().best(ask(1, turnAt(1, 1, true)));

        assertThat(outcome).isInstanceOfSatisfying(Outcome.Impossible.class, impossible -> assertThat(
                        impossible.obstacles().toString())
                .contains("cannot meet this lock", "measure 2"));
    }

    @Test
    void choicesAtAPlaceGiveThePriceOfTheOther() {
        Scene scene = Scene.of(waltz(EIGHT), 120, 2);
        WrittenPlace place = new WrittenPlace(3, MusicalTime.ZERO);
        BellowsLayer layer = scene.layer();
        long free = found(layer.best(ask(1))).best().cost(Taste.PLAIN);

        var choices = layer.choicesAt(ask(1), 1, place);

        assertThat(choices).hasSize(2);
        assertThat(choices.get(0).extraCost()).isZero();
        boolean turn = choices.get(1).decision().value().equals("turn");
        BellowsPlan other = found(layer.best(ask(1, new Lock.Turn(OptionalInt.of(1), place, turn))))
                .best();
        assertThat(choices.get(1).extraCost())
                .isEqualTo(other.cost(Taste.PLAIN) - free)
                .isPositive();
    }

    @Test
    void apartIsTheCheapestPlanThatIsFarEnough() {
        Scene scene = Scene.of(waltz(EIGHT), 90, 1).on(SMALL, "bassoon");
        int start = scene.accordion().bellows().comfortableMillilitres() / 20;
        BellowsLayer layer = scene.layerFrom(start);
        BellowsPlan first = found(layer.best(ask(1))).best();
        List<Strokes> all = new BruteForce(scene, Taste.PLAIN, List.of(), start).all();
        TurnDistance distance = new TurnDistance(scene.ground(), all.get(0).places());
        for (int decisions = 1; decisions <= 4; decisions++) {
            int least = decisions;
            Strokes expected = all.stream()
                    .filter(plan -> plan.concessions() == all.get(0).concessions())
                    .filter(plan -> distance.of(plan.places()) >= least)
                    .findFirst()
                    .orElseThrow();

            Outcome.Found<BellowsPlan> apart = found(layer.apart(ask(1), List.of(first), decisions));

            assertThat(apart.best().cost(Taste.PLAIN)).isEqualTo(expected.cost());
            assertThat(apart.proven()).isTrue();
        }
    }

    @Test
    void apartFromSeveralKeepsItsDistanceFromEach() {
        Scene scene = Scene.of(waltz(EIGHT), 90, 3);
        BellowsLayer layer = scene.layer();
        BellowsPlan first = found(layer.best(ask(1))).best();
        BellowsPlan second = found(layer.apart(ask(1), List.of(first), 2)).best();
        BellowsPlan third =
                found(layer.apart(ask(1), List.of(first, second), 2)).best();

        assertThat(turns(List.of(first, second, third))).doesNotHaveDuplicates();
    }

    /** O47: mikezamp.com, two teaching articles; Magnante's method. */
    @Test
    void noTurnInsideASoundingNote() {
        for (int tempo : List.of(30, 60, 120)) {
            Scene scene = Scene.of(waltz(EIGHT), tempo, 2).on(SMALL, "bassoon");
            for (BellowsPlan.Stroke stroke : best(scene).strokes())
                assertThat(scene.performance().treble())
                        .noneMatch(note -> note.onsetMicros() < stroke.startMicros()
                                && note.releaseMicros() > stroke.startMicros());
        }
    }

    @Test
    void heldNoteTooLongForTheBellowsIsAnObstacleWithNumbersThatHold() {
        String held = "C4+E4+G4+C5~ h. | ~C4+E4+G4+C5 h."
                .replace("C4+E4+G4+C5~", "C4~+E4~+G4~+C5~")
                .replace("~C4+E4+G4+C5", "~C4+~E4+~G4+~C5");
        Scene scene = Scene.of(waltz(held), 15, 1).on(SMALL, "bandoneon");

        Outcome<BellowsPlan> outcome = scene.layer().best(ask(1));

        assertThat(outcome).isInstanceOf(Outcome.Impossible.class);
        var obstacle = ((Outcome.Impossible<BellowsPlan>) outcome).obstacles().get(0);
        assertThat(obstacle.code()).isEqualTo("stretch-without-turn");
        assertThat(obstacle.message())
                .contains("ml of " + scene.accordion().bellows().fullMillilitres() + " ml");
        assertThat(obstacle.remedies()).anyMatch(remedy -> remedy.english().contains("beats a minute or faster"));
        String tempo = obstacle.remedies().get(0).args().get(0).replaceAll("\\..*", "");
        Scene faster = Scene.of(waltz(held), Integer.parseInt(tempo) + 1, 1).on(SMALL, "bandoneon");
        int full = faster.accordion().bellows().fullMillilitres();
        assertThat(faster.ground().air.total()).isLessThanOrEqualTo(full);
        Scene slower = Scene.of(waltz(held), Integer.parseInt(tempo) - 1, 1).on(SMALL, "bandoneon");
        assertThat(slower.ground().air.total()).isGreaterThan(full);
    }

    @Test
    void playerWhoAllowsItTurnsInTheHeldNoteAndThePlanSaysSo() {
        String held = "C4~+E4~+G4~ h. | ~C4~+~E4~+~G4~ h. | ~C4+~E4+~G4 h.";
        Scene scene = Scene.of(waltz(held), 20, 1).on(SMALL, "bandoneon");
        Player plain = scene.player();
        Player willing = new Player(
                plain.id(),
                plain.name(),
                plain.handSpanTenths(),
                plain.bassMethod(),
                plain.jumps(),
                true,
                plain.taste());

        assertThat(scene.layer().best(ask(1))).isInstanceOf(Outcome.Impossible.class);
        assertThat(best(scene.with(willing)).concessions())
                .extracting(Concession::what)
                .contains(GiveWay.TURN_IN_HELD_NOTE);
    }

    @Test
    void playerWhoAllowsItDoesNotTurnInAHeldNoteWithoutNeed() {
        Scene scene = Scene.of(waltz(EIGHT), 100, 2);
        Player plain = scene.player();
        Player willing = new Player(
                plain.id(),
                plain.name(),
                plain.handSpanTenths(),
                plain.bassMethod(),
                plain.jumps(),
                true,
                plain.taste());

        assertThat(best(scene.with(willing)).concessions()).isEmpty();
    }

    @Test
    void silentLeftHandNeedsLessAir() {
        Scene scene = Scene.of(waltz(EIGHT), 100, 1);

        assertThat(scene.with(Scene.SILENT).ground().air.total())
                .isLessThan(scene.ground().air.total());
    }

    @Test
    void turnDoesNotFallOnALargeJump() {
        Scene scene = Scene.of(waltz(EIGHT + " | " + EIGHT), 120, 1);
        List<BellowsPlan.Stroke> before = best(scene).strokes();
        WrittenPlace avoided = before.get(1).place();
        List<LeftHandPlan.Event> events = scene.leftHand().events().stream()
                .map(event -> event.place().equals(avoided)
                        ? Scene.event(
                                event.index(),
                                scene.performance().measures().get(event.measure()),
                                event.place().offset(),
                                event.onsetMicros(),
                                event.releaseMicros(),
                                event.buttons().get(0).row(),
                                LeftHandPlan.Jump.LARGE)
                        : event)
                .toList();
        Scene jumping = scene.with(new LeftHandPlan(events, scene.leftHand().costByRule(), List.of()));

        assertThat(jumping.ground().places).anyMatch(place -> place.facts().jump() == TurnPlace.Jump.LARGE);
        assertThat(best(jumping).strokes()).noneMatch(stroke -> stroke.place().equals(avoided));
    }

    @Test
    void turnUnderAHeldChordIsTakenOnlyWhereNothingElseIsLeftAndIsListed() {
        Scene scene = Scene.of(waltz(EIGHT), 60, 1).on(SMALL, "bassoon");
        long end = scene.performance().endMicros();
        LeftHandPlan held = new LeftHandPlan(
                List.of(Scene.event(
                        0,
                        scene.performance().measures().get(0),
                        MusicalTime.ZERO,
                        0,
                        end,
                        BassRow.MAJOR,
                        LeftHandPlan.Jump.NONE)),
                scene.leftHand().costByRule(),
                List.of());

        BellowsPlan plan = best(scene.with(held));

        assertThat(plan.turns()).isPositive();
        assertThat(plan.concessions())
                .filteredOn(one -> one.what() == GiveWay.TURN_UNDER_SUSTAINED_CHORD)
                .hasSize(plan.turns());
        assertThat(best(scene).concessions()).isEmpty();
    }
}
