package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class SpanInChordTest extends RuleContract<FingerMoment> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerMoment> rule() {
        return new SpanInChord();
    }

    @Override
    protected List<FingerMoment> steps() {
        return List.of(
                Steps.moment(28, 60, 1, 64, 3, 67, 5),
                Steps.moment(28, 60, 1, 64, 2, 72, 3),
                Steps.moment(28, 60, 3, 72, 4));
    }
}
