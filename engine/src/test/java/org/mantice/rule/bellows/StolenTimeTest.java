package org.mantice.rule.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TurnPlace;

class StolenTimeTest extends RuleContract<TurnPlace> {
    private final StolenTime rule = new StolenTime();

    @Override
    protected RuleProvider provider() {
        return new BellowsRules();
    }

    @Override
    protected Rule<TurnPlace> rule() {
        return rule;
    }

    @Override
    protected List<TurnPlace> steps() {
        return List.of(PlaceSteps.after(100, 500), PlaceSteps.after(500, 500), PlaceSteps.rest(50));
    }

    @Test
    void shorterNotesSufferMore() {
        assertThat(rule.cost(PlaceSteps.after(60, 500))).isGreaterThan(rule.cost(PlaceSteps.after(120, 500)));
    }

    @Test
    void silenceAsLongAsTheTurnSparesTheNote() {
        assertThat(rule.cost(PlaceSteps.rest(50))).isZero();
    }

    @Test
    void wholeNoteStolenCostsThreePositionChangesLessTheTenth() {
        assertThat(rule.cost(PlaceSteps.after(50, 500))).isEqualTo(2_700);
    }
}
