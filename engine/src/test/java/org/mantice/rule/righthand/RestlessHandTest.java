package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerTriple;
import org.mantice.rule.HandMove;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class RestlessHandTest extends RuleContract<FingerTriple> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerTriple> rule() {
        return new RestlessHand();
    }

    @Override
    protected List<FingerTriple> steps() {
        return List.of(
                Steps.triple(60, 1, 62, 2, 64, 3),
                Steps.triple(
                        HandMove.THUMB_UNDER,
                        HandMove.FINGER_OVER,
                        Steps.moment(28, 64, 3),
                        Steps.moment(31, 65, 1),
                        Steps.moment(28, 64, 3)),
                Steps.triple(
                        HandMove.THUMB_UNDER,
                        HandMove.STRETCH,
                        Steps.moment(28, 64, 3),
                        Steps.moment(31, 65, 1),
                        Steps.moment(33, 69, 2)));
    }
}
