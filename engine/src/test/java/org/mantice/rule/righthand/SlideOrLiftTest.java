package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class SlideOrLiftTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new SlideOrLift();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                Steps.pair(64, 3, 65, 4),
                Steps.pair(HandMove.GLIDE, Steps.moment(28, 66, 3), Steps.moment(28, 67, 3)),
                Steps.pair(HandMove.GLIDE, Steps.moment(28, 65, 3), Steps.moment(28, 67, 3)),
                Steps.pair(HandMove.LIFT, Steps.moment(28, 60, 1), Steps.moment(42, 84, 1)),
                Steps.pair(HandMove.LIFT, Steps.moment(28, 60, 1), Steps.moment(42, 84, 1), 300, 0, true),
                Steps.pair(HandMove.SHIFT_AT_GAP, Steps.moment(28, 60, 1), Steps.moment(30, 64, 1), 300, 100, false));
    }
}
