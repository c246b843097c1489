package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class FourOnBlackTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new RightHandRules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new FourOnBlack();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(Steps.pair(64, 3, 65, 4), Steps.pair(64, 3, 66, 4), Steps.pair(70, 4, 69, 3));
    }
}
