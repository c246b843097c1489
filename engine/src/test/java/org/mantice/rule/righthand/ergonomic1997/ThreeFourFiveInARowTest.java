package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.righthand.Steps;

class ThreeFourFiveInARowTest extends RuleContract<FingerTriple> {
    @Override
    protected RuleProvider provider() {
        return new Ergonomic1997Rules();
    }

    @Override
    protected Rule<FingerTriple> rule() {
        return new ThreeFourFiveInARow();
    }

    @Override
    protected List<FingerTriple> steps() {
        return List.of(Steps.triple(60, 1, 62, 2, 64, 3), Steps.triple(64, 3, 67, 5, 65, 4));
    }
}
