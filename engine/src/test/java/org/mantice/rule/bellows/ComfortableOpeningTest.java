package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.OpeningCell;
import org.mantice.rule.OpeningCell.Moment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class ComfortableOpeningTest extends RuleContract<OpeningCell> {
    private final ComfortableOpening rule = new ComfortableOpening();

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
                new OpeningCell(40, Moment.TURN_IN),
                new OpeningCell(41, Moment.TURN_IN),
                new OpeningCell(41, Moment.END));
    }

    @Test
    void exactlyComfortableIsAllowedAndWiderIsNot() {
        assertThat(rule.cost(new OpeningCell(OpeningCell.COMFORTABLE, Moment.END)))
                .isZero();
        assertThat(rule.cost(new OpeningCell(OpeningCell.COMFORTABLE + 1, Moment.END)))
                .isEqualTo(Rule.BAN);
    }
}
