package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class SpanOfFingersTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new SpanOfFingers();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                Steps.pair(60, 1, 62, 2), Steps.pair(60, 2, 67, 3), Steps.pair(60, 1, 62, 5), Steps.pair(64, 3, 65, 1));
    }
}
