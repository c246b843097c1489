package org.mantice.rule.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.player.BassMethod;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class StretchTest extends RuleContract<ButtonMoment> {
    @Override
    protected RuleProvider provider() {
        return new LeftHandRules();
    }

    @Override
    protected Rule<ButtonMoment> rule() {
        return new Stretch();
    }

    @Override
    protected List<ButtonMoment> steps() {
        List<ButtonMoment> steps = new ArrayList<>(LeftHandSteps.moments());
        steps.add(held(4, 200, -154));
        steps.add(held(2, 100, -54));
        return steps;
    }

    /** E in the bass row with the C major chord: four columns apart, though each finger is nearly where it rests. */
    @Test
    void bassAndChordHeldTogetherFarApartCostMoreThanTheirFingersAlone() {
        assertThat(rule().cost(held(4, 200, -154))).isGreaterThan(1_500);
        assertThat(rule().cost(held(2, 100, -54))).isZero();
    }

    private static ButtonMoment held(int bassColumn, int bassOffset, int chordOffset) {
        return new ButtonMoment(
                List.of(new BassButton(BassRow.BASS, bassColumn), new BassButton(BassRow.MAJOR, 0)),
                List.of(2, 5),
                2,
                List.of(bassOffset, chordOffset),
                BassMethod.FOUR_THREE_TWO,
                ButtonMoment.Bass.OTHER,
                false,
                new TreeSet<>(),
                new TreeSet<>(),
                List.of());
    }
}
