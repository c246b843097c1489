package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.Stroke;
import org.mantice.rule.StrokePair;

class EvenStrokesTest extends RuleContract<StrokePair> {
    private final EvenStrokes rule = new EvenStrokes();

    @Override
    protected RuleProvider provider() {
        return new BellowsRules();
    }

    @Override
    protected Rule<StrokePair> rule() {
        return rule;
    }

    @Override
    protected List<StrokePair> steps() {
        return List.of(pair(16, 16), pair(16, 8), pair(16, 12), pair(16, 15));
    }

    private static StrokePair pair(int first, int second) {
        return new StrokePair(new Stroke(first, 4, false, false), new Stroke(second, 4, false, false));
    }

    /** Common practice, no source. */
    @Test
    void evenIsFreeHalfIsBetterThanThreeQuarters() {
        assertThat(rule.cost(pair(16, 16))).isZero();
        assertThat(rule.cost(pair(16, 8))).isPositive().isLessThan(rule.cost(pair(16, 12)));
    }

    @Test
    void orderOfTheTwoDoesNotMatter() {
        assertThat(rule.cost(pair(16, 12))).isEqualTo(rule.cost(pair(12, 16)));
    }
}
