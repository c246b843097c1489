package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class FingersOnOneKeyTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new FingersOnOneKey();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                Steps.pair(64, 3, 64, 3),
                Steps.pair(64, 3, 64, 2),
                Steps.pair(HandMove.STAY, Steps.moment(28, 64, 3), Steps.moment(28, 64, 3), 100, 0, false),
                Steps.pair(HandMove.REPEATED_NOTE, Steps.moment(28, 64, 2), Steps.moment(28, 64, 3), 100, 0, false));
    }
}
