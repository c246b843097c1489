package org.mantice.rule.lefthand;

import java.util.List;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class SubstitutesTest extends RuleContract<ButtonMoment> {
    @Override
    protected RuleProvider provider() {
        return new LeftHandRules();
    }

    @Override
    protected Rule<ButtonMoment> rule() {
        return new Substitutes();
    }

    @Override
    protected List<ButtonMoment> steps() {
        return LeftHandSteps.moments();
    }
}
