package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class ThumbPassingTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new ThumbPassing();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                Steps.pair(60, 1, 62, 2),
                Steps.pair(HandMove.THUMB_UNDER, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1)),
                Steps.pair(HandMove.FINGER_OVER, Steps.moment(31, 66, 1), Steps.moment(28, 62, 4)));
    }
}
