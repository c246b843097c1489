package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class ThreeFourFiveTest extends RuleContract<FingerTriple> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerTriple> rule() {
        return new ThreeFourFive();
    }

    @Override
    protected List<FingerTriple> steps() {
        return List.of(
                Steps.triple(60, 1, 62, 2, 64, 3),
                Steps.triple(64, 3, 65, 4, 67, 5),
                Steps.triple(64, 3, 67, 5, 65, 4));
    }
}
