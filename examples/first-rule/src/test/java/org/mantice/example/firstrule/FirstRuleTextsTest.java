package org.mantice.example.firstrule;

import java.util.List;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TextsContract;

class FirstRuleTextsTest extends TextsContract {
    @Override
    protected List<RuleProvider> packs() {
        return List.of(new FirstRulePack());
    }
}
