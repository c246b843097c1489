package org.mantice.rule.variation;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** The table of contents of our own repeat variation rules. */
public final class VariationRules implements RuleProvider {
    @Override
    public String id() {
        return "mantice.variation";
    }

    @Override
    public String version() {
        return "0.1.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.rule.variation.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of();
    }
}
