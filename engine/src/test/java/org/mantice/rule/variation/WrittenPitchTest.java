package org.mantice.rule.variation;

import java.util.List;
import org.mantice.rule.PassChoice;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class WrittenPitchTest extends RuleContract<PassChoice> {
    @Override
    protected RuleProvider provider() {
        return new VariationRules();
    }

    @Override
    protected Rule<PassChoice> rule() {
        return new WrittenPitch();
    }

    @Override
    protected List<PassChoice> steps() {
        return VariationSteps.choices();
    }
}
