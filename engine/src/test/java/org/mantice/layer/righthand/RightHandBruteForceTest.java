package org.mantice.layer.righthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.plan.RightHandPlan;
import org.mantice.player.Taste;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.HandMove;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.righthand.RightHandRules;
import org.mantice.rule.righthand.ergonomic1997.Ergonomic1997Rules;
import org.mantice.rule.righthand.ergonomic1997.Fingerings;

/** The layer against every fingering there is, each priced by the rules one by one. */
class RightHandBruteForceTest {
    private static final int SPAN = 95;

    private static List<RightHandPlan> found(Performance performance, RuleProvider rules, Taste taste, int count) {
        RightHandLayer layer = Hands.layer(performance, Instruments.WIDE, SPAN, Hands.book(rules));
        Outcome<RightHandPlan> outcome = layer.best(new Question(taste, List.of(), count, () -> false));
        return ((Outcome.Found<RightHandPlan>) outcome).plans();
    }

    /** Every plan that hands allow, in order: fewest concessions, cost, then the order in which choices are listed. */
    private static List<RightHandPlan> all(Performance performance, RuleProvider rules, Taste taste) {
        HandMusic music = new HandMusic(performance, Hands.noVariation(performance));
        HandCharges charges = new HandCharges(music, SPAN, RuleBook.of(List.of(rules)));
        List<RightHandPlan> plans = new ArrayList<>();
        extend(music, new ArrayList<>(), postures -> plans.add(charges.priced(postures)));
        plans.sort(Comparator.<RightHandPlan>comparingInt(
                        plan -> plan.concessions().size())
                .thenComparingLong(plan -> plan.cost(taste)));
        return plans.stream()
                .filter(plan ->
                        plan.concessions().size() == plans.get(0).concessions().size())
                .toList();
    }

    private interface Taker {
        void take(List<Posture> postures);
    }

    private static void extend(HandMusic music, List<Posture> sofar, Taker taker) {
        if (sofar.size() == music.size()) {
            taker.take(List.copyOf(sofar));
            return;
        }
        for (Posture next : Postures.of(music.moment(sofar.size()).keys(), SPAN)) {
            if (!sofar.isEmpty() && !follows(music, sofar.size() - 1, sofar.get(sofar.size() - 1), next)) continue;
            sofar.add(next);
            extend(music, sofar, taker);
            sofar.remove(sofar.size() - 1);
        }
    }

    private static boolean follows(HandMusic music, int index, Posture before, Posture after) {
        FingerMoment from = MomentTable.step(music.moment(index), before.fingers(), before.place(), SPAN);
        FingerMoment to = MomentTable.step(music.moment(index + 1), after.fingers(), after.place(), SPAN);
        HandMove move = HandMoves.step(music.junctionAfter(index), from, to).move();
        return after.landing() || move == HandMove.STAY;
    }

    @ParameterizedTest
    @ValueSource(strings = {"C4 E4 G4 E4", "F#4 G4 Bb4 C5", "C4+E4 D4 r C5", "(C4 C6) D4", "G4 G4 G4 A4", "C4_ E4 D4"})
    void plansComeInTheOrderOfBruteForceTiesIncluded(String text) {
        Taste taste = Taste.PLAIN.with("fingering.weak-finger", 0).with("fingering.reach", 700);
        Performance performance = Hands.performance(text, 150);

        List<RightHandPlan> brute = all(performance, new RightHandRules(), taste);
        int count = Math.min(300, brute.size());

        List<RightHandPlan> plans = found(performance, new RightHandRules(), taste, count);
        assertThat(plans).hasSize(count);
        // Brute force lists choices in the lattice's order, and its sort is stable: ties agree too.
        assertThat(plans).isEqualTo(brute.subList(0, count));
        assertThat(plans).extracting(plan -> plan.cost(taste)).isSorted();
    }

    /** Source of the scores: Parncutt et al. 1997, worked out in {@code Ergonomic1997Test}. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
        "C4 D4 E4 F4 G4, 1 2 3 4 5, 4",
        "C4 D4 E4 F4 G4 A4 B4 C5, 1 2 3 1 2 3 4 5, 15",
        "G3 A3 B3 C4 D4 E4 F#4 G4, 1 2 3 1 2 3 4 5, 16",
        "D4 E4 F#4 G4 A4 B4 C#5 D5, 1 2 3 1 2 3 4 5, 15",
        "A3 B3 C#4 D4 E4 F#4 G#4 A4, 1 2 3 1 2 3 4 5, 14",
        "E4 F#4 G#4 A4 B4 C#5 D#5 E5, 1 2 3 1 2 3 4 5, 14",
        "B3 C#4 D#4 E4 F#4 G#4 A#4 B4, 1 2 3 1 2 3 4 5, 14",
        "C4 E4 G4 C5, 1 2 3 5, 5",
        "C4 E4 G4 Bb4 C5, 1 2 3 4 5, 13"
    })
    void handPlacesDoNotChangeTheOptimumOfTheModelOf1997(String text, String fingers, int points) {
        RightHandPlan best = found(Hands.performance(text, 300), new Ergonomic1997Rules(), Taste.PLAIN, 1)
                .get(0);

        assertThat(Hands.fingers(best)).isEqualTo(fingers);
        assertThat(best.cost(Taste.PLAIN)).isEqualTo(points * 1_000_000L);
        assertThat(best.concessions()).isEmpty();
    }

    @Test
    void theModelOf1997GivesTheLayerTheOptimumOfAllFingerings() {
        for (String text : List.of("Eb4 F4 G4 Ab4 Bb4 C5 D5 Eb5", "C5 A4 F#4 G4 D4 E4 C4", "F#4 F#4 B4 C#5 A4 C5")) {
            List<Integer> keys =
                    List.of(text.split(" ")).stream().map(Hands::midi).toList();
            Fingerings.Priced best =
                    new Fingerings(keys, new Ergonomic1997Rules()).feasible().get(0);

            RightHandPlan plan = found(Hands.performance(text, 300), new Ergonomic1997Rules(), Taste.PLAIN, 1)
                    .get(0);

            assertThat(plan.cost(Taste.PLAIN)).as(text).isEqualTo(best.cost() * 1_000);
        }
    }
}
