package org.mantice.layer.lefthand;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** A pack of given rules. */
record OnePack(String id, List<Rule<?>> rules) implements RuleProvider {
    @Override
    public String version() {
        return "1.0.0";
    }

    @Override
    public String bundle() {
        return "none";
    }
}
