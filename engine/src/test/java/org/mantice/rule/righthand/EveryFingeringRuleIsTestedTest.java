package org.mantice.rule.righthand;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.mantice.rule.Rule;
import org.mantice.rule.righthand.ergonomic1997.Ergonomic1997Rules;

class EveryFingeringRuleIsTestedTest {
    @Test
    void everyRuleHasATestOfItsContractBesideIt() {
        List<Rule<?>> rules = new ArrayList<>(new RightHandRules().rules());
        rules.addAll(new Ergonomic1997Rules().rules());

        for (Rule<?> rule : rules)
            assertThatCode(() -> Class.forName(rule.getClass().getName() + "Test"))
                    .as(rule.info().id())
                    .doesNotThrowAnyException();
    }
}
