package org.mantice.rule.righthand.ergonomic1997;

import java.util.List;
import org.mantice.rule.FingerPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.righthand.Steps;

class FourOnBlackBesideThreeTest extends RuleContract<FingerPair> {
    @Override
    protected RuleProvider provider() {
        return new Ergonomic1997Rules();
    }

    @Override
    protected Rule<FingerPair> rule() {
        return new FourOnBlackBesideThree();
    }

    @Override
    protected List<FingerPair> steps() {
        return List.of(Steps.pair(64, 3, 65, 4), Steps.pair(66, 4, 64, 3));
    }
}
