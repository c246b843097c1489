package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class AsPrintedTest extends RuleContract<FingerMoment> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerMoment> rule() {
        return new AsPrinted();
    }

    @Override
    protected List<FingerMoment> steps() {
        return List.of(
                Steps.moment(28, 60, 1),
                new FingerMoment(List.of(60), List.of(1), List.of(false), List.of(2), 28, 300, 95),
                new FingerMoment(List.of(60), List.of(2), List.of(false), List.of(2), 27, 300, 95));
    }
}
