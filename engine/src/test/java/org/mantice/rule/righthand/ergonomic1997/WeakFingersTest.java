package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.righthand.Steps;

class WeakFingersTest extends RuleContract<FingerMoment> {
    @Override
    protected RuleProvider provider() {
        return new Ergonomic1997Rules();
    }

    @Override
    protected Rule<FingerMoment> rule() {
        return new WeakFingers();
    }

    @Override
    protected List<FingerMoment> steps() {
        return List.of(Steps.moment(28, 60, 1), Steps.moment(28, 65, 4));
    }
}
