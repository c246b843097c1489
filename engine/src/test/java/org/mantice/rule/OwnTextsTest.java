package org.mantice.rule;

import java.util.List;
import org.mantice.rule.bellows.BellowsRules;
import org.mantice.rule.lefthand.LeftHandRules;
import org.mantice.rule.righthand.RightHandRules;
import org.mantice.rule.righthand.ergonomic1997.Ergonomic1997Rules;
import org.mantice.rule.variation.VariationRules;

class OwnTextsTest extends TextsContract {
    @Override
    protected List<RuleProvider> packs() {
        return List.of(
                new VariationRules(),
                new LeftHandRules(),
                new BellowsRules(),
                new RightHandRules(),
                new Ergonomic1997Rules());
    }
}
