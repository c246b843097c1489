package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class ThumbAndFiveOnBlackTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new ThumbAndFiveOnBlack();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(
                Steps.pair(60, 1, 62, 2),
                Steps.pair(61, 1, 62, 2),
                Steps.pair(61, 1, 63, 2),
                Steps.pair(65, 4, 66, 5),
                Steps.pair(66, 4, 68, 5));
    }
}
