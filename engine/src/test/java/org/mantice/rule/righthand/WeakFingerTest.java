package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class WeakFingerTest extends RuleContract<FingerMoment> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerMoment> rule() {
        return new WeakFinger();
    }

    @Override
    protected List<FingerMoment> steps() {
        return List.of(Steps.moment(28, 60, 1), Steps.moment(28, 65, 4), Steps.moment(28, 60, 1, 67, 5));
    }
}
