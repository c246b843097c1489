package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.AccordionPresets;
import org.mantice.layer.Choice;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Explanation;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.PlanDifference;
import org.mantice.plan.Sentence;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.rule.RuleSet;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class PlanningTest {
    private static final Tune WALTZ = Tunes.melody(
            "3/4",
            "\"C\" C4 q, E4 q, G4 q | C5 h, B4 q | \"F\" A4 q, C5 q, A4 q | \"C\" G4 h. | \"G7\" F4 q, A4 q, F4 q"
                    + " | \"Am\" E4 q, G4 q, C5 q | \"G7\" D5 q, B4 q, G4 q | \"C\" C5 h. | \"E7\" B4 q, G#4 q, E4 q"
                    + " | \"Am\" A4 h. | \"D7\" A4 q, F#4 q, D4 q | \"G\" G4 h. | \"C7\" Bb4 q, G4 q, E4 q | \"F\" F4 h."
                    + " | \"G7\" D4 q, E4 q, F4 q | \"C\" C4 h.");
    private static final Planner PLANNER = new Planner(Packs.ofClassPath().providers());

    @Test
    void alternativesStayWithinTheLimitDifferEnoughAndAreSorted() {
        Planning planning = planning(WALTZ, "full-41-key-120-bass");

        List<Plan> plans = found(planning, 12);

        assertThat(plans.size()).isBetween(3, 12);
        long best = plans.stream()
                .filter(plan -> plan.label().startsWith("best"))
                .mapToLong(plan -> plan.cost(Taste.PLAIN))
                .max()
                .orElseThrow();
        assertThat(plans).extracting(plan -> plan.cost(Taste.PLAIN)).isSorted();
        assertThat(plans).allMatch(plan -> plan.cost(Taste.PLAIN) <= best + Math.max(best / 10, 4_000_000));
        for (Plan one : plans)
            for (Plan other : plans)
                if (one != other) assertThat(differsEnough(one, other)).isTrue();
    }

    private static boolean differsEnough(Plan one, Plan other) {
        for (int layer = 0; layer < 4; layer++) {
            Set<Object> theirs = new HashSet<>(other.layers().get(layer).decisions());
            LayerPlan mine = one.layers().get(layer);
            long different =
                    mine.decisions().stream().filter(d -> !theirs.contains(d)).count();
            if (different >= (layer == 0 ? 1 : 2)) return true;
        }
        return false;
    }

    @Test
    void everyPlanIsToldOfOnceTheBestFirst() {
        Planning planning = planning(WALTZ, "full-41-key-120-bass");
        List<Plan> told = new ArrayList<>();

        Alternatives answer = planning.alternatives(Taste.PLAIN, List.of(), 5, told::add, () -> false);

        List<Plan> plans = ((Alternatives.Found) answer).plans();
        assertThat(told)
                .extracting(Plan::decisions)
                .containsExactlyInAnyOrderElementsOf(
                        plans.stream().map(Plan::decisions).toList());
        assertThat(told.get(0).label()).isEqualTo("best");
    }

    @Test
    void sameQuestionGetsTheSameAnswer() {
        assertThat(found(planning(WALTZ, "full-41-key-120-bass"), 6))
                .isEqualTo(found(planning(WALTZ, "full-41-key-120-bass"), 6));
    }

    @Test
    void explanationAddsUpAndDifferencesAreOpposite() {
        Planning planning = planning(WALTZ, "standard-34-key-72-bass");
        List<Plan> plans = found(planning, 3);
        Taste taste = Taste.PLAIN.with("bellows.turns", 1_700).with("fingering.span", 300);

        Explanation first = planning.explain(plans.get(0), taste);
        Explanation second = planning.explain(plans.get(1), taste);

        assertThat(first.cost()).isEqualTo(plans.get(0).cost(taste));
        assertThat(second.cost()).isEqualTo(plans.get(1).cost(taste));
        assertThat(first.minus(second)).isEqualTo(second.minus(first).negated());
        assertThat(first.minus(first).children()).isEmpty();
        assertThat(first.minus(second).cost()).isEqualTo(first.cost() - second.cost());
        assertThat(planning.rescore(plans.get(1))).isEqualTo(plans.get(1));
        assertThat(PlanDifference.between(plans.get(0), plans.get(1))).isNotEmpty();
        assertThat(PlanDifference.between(plans.get(0), plans.get(0))).isEmpty();
    }

    @Test
    void everyLayerTellsWhatElseWasPossibleAtAPlace() {
        Planning planning = planning(WALTZ, "full-41-key-120-bass");
        Plan best = found(planning, 1).get(0);
        WrittenPlace place = new WrittenPlace(4, MusicalTime.ZERO);
        for (RuleSet layer : RuleSet.values()) {
            List<Choice> choices = planning.choicesAt(best, layer, Taste.PLAIN, List.of(), 1, place);

            assertThat(choices).as("%s", layer).hasSizeGreaterThanOrEqualTo(2);
            assertThat(choices.get(0).extraCost()).as("%s", layer).isZero();
            assertThat(choices).extracting(Choice::extraCost).as("%s", layer).allMatch(extra -> extra >= 0);
        }
    }

    @Test
    void cancelledPlanningStops() {
        Planning planning = planning(WALTZ, "full-41-key-120-bass");

        assertThatThrownBy(() -> planning.alternatives(Taste.PLAIN, List.of(), 3, plan -> {}, () -> true))
                .isInstanceOf(CancellationException.class);
    }

    /** The slower the tempo the more air a stroke takes, until the comfortable opening has to give way. */
    @Test
    void whatGaveWayComesWithRemediesThatHelpWhenTheyAreTaken() {
        int helped = 0;
        for (int tempo = 40; tempo >= 5; tempo--) {
            Planning planning = heldChords(tempo);
            if (!(planning.best(Taste.PLAIN, List.of()) instanceof Alternatives.Found answer)) continue;
            int gaveWay = answer.best().bellows().concessions().size();
            for (Sentence remedy : planning.remedies(answer.best(), Taste.PLAIN, List.of())) {
                assertThat(gaveWay).isPositive();
                Matcher faster =
                        Pattern.compile("Play at (\\d+) beats a minute: .*").matcher(remedy.english());
                if (!faster.matches()) continue;
                Planning quick = heldChords(Integer.parseInt(faster.group(1)));
                assertThat(found(quick, 1).get(0).bellows().concessions()).hasSizeLessThan(gaveWay);
                helped++;
            }
        }
        assertThat(helped).isPositive();
    }

    private static Planning heldChords(int tempo) {
        Tune held = Tunes.melody("4/4", "\"C\" C4+E4+G4 w | C4+E4+G4 w | C4+E4+G4 w | C4+E4+G4 w");
        return PLANNER.prepare(new PlanRequest(
                held,
                AccordionPresets.get("student-26-key-48-bass"),
                PlayerPresets.get("medium-hand"),
                SettingsBuilder.of(held).beatsPerMinute(tempo).timesThrough(1).build(),
                List.of(),
                1));
    }

    private static List<Plan> found(Planning planning, int count) {
        return ((Alternatives.Found) planning.alternatives(Taste.PLAIN, List.of(), count, plan -> {}, () -> false))
                .plans();
    }

    private static Planning planning(Tune tune, String accordion) {
        return PLANNER.prepare(new PlanRequest(
                tune,
                AccordionPresets.get(accordion),
                PlayerPresets.get("medium-hand"),
                SettingsBuilder.of(tune).timesThrough(2).build(),
                List.<Lock>of(),
                12));
    }
}
