package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class ChangeOfPlaceTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new ChangeOfPlace();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                Steps.pair(60, 1, 62, 2),
                Steps.pair(HandMove.THUMB_UNDER, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                Steps.pair(HandMove.FINGER_OVER, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                Steps.pair(HandMove.STRETCH, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                Steps.pair(HandMove.SHIFT_AT_GAP, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 300, false),
                Steps.pair(HandMove.REPEATED_NOTE, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                Steps.pair(HandMove.GLIDE, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false),
                Steps.pair(HandMove.LIFT, Steps.moment(28, 64, 3), Steps.moment(31, 65, 1), 300, 0, false));
    }
}
