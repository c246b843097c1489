package org.mantice.rule.lefthand;

import java.util.List;
import org.mantice.rule.ButtonPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class DividedChordTest extends RuleContract<ButtonPair> {
    @Override
    protected RuleProvider provider() {
        return new LeftHandRules();
    }

    @Override
    protected Rule<ButtonPair> rule() {
        return new DividedChord();
    }

    @Override
    protected List<ButtonPair> steps() {
        return LeftHandSteps.pairs();
    }
}
