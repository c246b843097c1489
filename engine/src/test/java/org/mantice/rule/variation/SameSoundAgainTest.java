package org.mantice.rule.variation;

import java.util.List;
import org.mantice.rule.PassPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class SameSoundAgainTest extends RuleContract<PassPair> {
    @Override
    protected RuleProvider provider() {
        return new VariationRules();
    }

    @Override
    protected Rule<PassPair> rule() {
        return new SameSoundAgain();
    }

    @Override
    protected List<PassPair> steps() {
        return VariationSteps.pairs();
    }
}
