package org.mantice.plugins.firstyear;

import java.util.List;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.TextsContract;

class FirstYearTextsTest extends TextsContract {
    @Override
    protected List<RuleProvider> packs() {
        return List.of(new FirstYearPack());
    }
}
