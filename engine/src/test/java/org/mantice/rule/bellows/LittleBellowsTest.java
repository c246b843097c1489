package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.OpeningCell.Moment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class LittleBellowsTest extends RuleContract<OpeningCell> {
    private final LittleBellows rule = new LittleBellows();

    @Override
    protected RuleProvider provider() {
        return new BellowsRules();
    }

    @Override
    protected Rule<OpeningCell> rule() {
        return rule;
    }

    @Override
    protected List<OpeningCell> steps() {
        return List.of(
                new OpeningCell(2, Moment.START),
                new OpeningCell(9, Moment.START),
                new OpeningCell(20, Moment.TURN_IN),
                new OpeningCell(30, Moment.TURN_IN),
                new OpeningCell(0, Moment.TURN_OUT),
                new OpeningCell(2, Moment.TURN_OUT),
                new OpeningCell(40, Moment.END));
    }

    /** Common practice, no source: keep a reserve, prefer the nearer half. */
    @Test
    void widerBeyondTheHalfAndNearerToClosedCostMore() {
        assertThat(rule.cost(new OpeningCell(36, Moment.TURN_IN)))
                .isGreaterThan(rule.cost(new OpeningCell(24, Moment.TURN_IN)));
        assertThat(rule.cost(new OpeningCell(0, Moment.TURN_OUT)))
                .isGreaterThan(rule.cost(new OpeningCell(1, Moment.TURN_OUT)));
    }
}
