package org.mantice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.instrument.AccordionPresets;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/**
 * How far planning layer by layer is from the joint optimum, on tiny tunes. Every set of registers is combined with the
 * left hand's plans in order of cost until these alone cost as much as the best whole found; the bellows and the right
 * hand are exact given the others and do not look at each other. So the joint optimum is proven, unless the left hand
 * has too many plans, which is said. The gaps are printed.
 */
class JointOptimumTest {
    private static final int REGISTERS = 500;
    private static final int LEFT_HANDS = 300;

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "full-41-key-120-bass; 3/4; \"C\" C4 q, E4 q, G4 q | \"G7\" F4 h, D4 q | \"C\" E4 q, C4 h",
                "standard-34-key-72-bass; 2/4; \"Am\" A4 e, B4 e, C5 q | \"E7\" B4 q, G#4 q | \"A7\" A4 h | \"Dm\" F4 h",
                "student-26-key-48-bass; 4/4; \"Bb\" D5 h, F4 h | \"F7\" C5 q, A4 q, Eb5 h | \"Bdim\" D5 w | \"Bb\" D5 w"
            })
    void layersOneAfterTheOtherAreComparedWithTheJointOptimum(String accordion, String meter, String text) {
        Tune tune = Tunes.melody(meter, text);
        Planning planning = new Planner(Packs.ofClassPath().providers())
                .prepare(new PlanRequest(
                        tune,
                        AccordionPresets.get(accordion),
                        PlayerPresets.get("medium-hand"),
                        SettingsBuilder.of(tune).timesThrough(2).build(),
                        List.of(),
                        1));
        Plan composed = ((Alternatives.Found) planning.best(Taste.PLAIN, List.of())).best();
        assertThat(composed.concessions()).isEmpty();

        Joint joint = new Joint(planning, composed.cost(Taste.PLAIN));
        joint.search();

        long gap = composed.cost(Taste.PLAIN) - joint.best;
        System.out.printf(
                Locale.ROOT,
                "joint optimum on %s in %s: %d combinations, %s; layer by layer %d micropoints, joint %d, gap %d (%.2f %%)%n",
                accordion,
                meter,
                joint.combinations,
                joint.proven ? "proven" : "not proven",
                composed.cost(Taste.PLAIN),
                joint.best,
                gap,
                100.0 * gap / Math.max(1, composed.cost(Taste.PLAIN)));
        assertThat(joint.combinations).isPositive();
        assertThat(joint.metComposed)
                .as("the composed plan is among the combinations")
                .isTrue();
        assertThat(gap).isNotNegative();
    }

    private static final class Joint {
        private final Planning planning;
        private final long composed;
        private long best = Long.MAX_VALUE;
        private int combinations;
        private boolean proven = true;
        private boolean metComposed;

        Joint(Planning planning, long composed) {
            this.planning = planning;
            this.composed = composed;
        }

        void search() {
            List<VariationPlan> registers = plans(planning.layers().variation().best(asking(REGISTERS)));
            proven = registers.size() < REGISTERS;
            for (VariationPlan variation : registers) {
                List<RightHandPlan> right =
                        plans(planning.layers().rightHand(variation).best(asking(1)));
                if (right.isEmpty()) continue;
                long fixed = variation.cost(Taste.PLAIN) + right.get(0).cost(Taste.PLAIN);
                if (fixed < best && right.get(0).concessions().isEmpty()) lefts(variation, fixed);
            }
        }

        private void lefts(VariationPlan variation, long fixed) {
            List<LeftHandPlan> lefts =
                    plans(planning.layers().leftHand(variation).best(asking(LEFT_HANDS)));
            for (LeftHandPlan left : lefts) {
                long sofar = fixed + left.cost(Taste.PLAIN);
                if (sofar >= best) return;
                if (!left.concessions().isEmpty()) continue;
                combinations++;
                for (BellowsPlan bellows :
                        plans(planning.layers().bellows(variation, left).best(asking(1)))) {
                    if (!bellows.concessions().isEmpty()) continue;
                    long whole = sofar + bellows.cost(Taste.PLAIN);
                    metComposed |= whole == composed;
                    best = Math.min(best, whole);
                }
            }
            proven &= lefts.size() < LEFT_HANDS;
        }

        private static Question asking(int count) {
            return new Question(Taste.PLAIN, List.of(), count, () -> false);
        }

        private static <P extends LayerPlan> List<P> plans(Outcome<P> outcome) {
            return outcome instanceof Outcome.Found<P> found ? found.plans() : List.of();
        }
    }
}
