package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.Stroke;

class WholePhrasesTest extends RuleContract<Stroke> {
    private final WholePhrases rule = new WholePhrases();

    @Override
    protected RuleProvider provider() {
        return new BellowsRules();
    }

    @Override
    protected Rule<Stroke> rule() {
        return rule;
    }

    @Override
    protected List<Stroke> steps() {
        return List.of(
                stroke(8), stroke(16), stroke(32), stroke(4), stroke(12), stroke(9), new Stroke(9, 4, true, false));
    }

    private static Stroke stroke(int halfBeats) {
        return new Stroke(halfBeats, 4, false, false);
    }

    /** Common practice, no source. */
    @Test
    void twoFourAndEightMeasuresAreFreeAndThreeIsBetterThanTwoAndAHalfBeat() {
        assertThat(List.of(rule.cost(stroke(8)), rule.cost(stroke(16)), rule.cost(stroke(32))))
                .containsOnly(0L);
        assertThat(rule.cost(stroke(12))).isPositive().isLessThan(rule.cost(stroke(9)));
    }

    @Test
    void firstAndLastStrokeAreFree() {
        assertThat(rule.cost(new Stroke(9, 4, true, false))).isZero();
        assertThat(rule.cost(new Stroke(9, 4, false, true))).isZero();
    }
}
