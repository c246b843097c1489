package org.mantice.example.firstrule;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** A pack with one rule. */
public final class FirstRulePack implements RuleProvider {
    @Override
    public String id() {
        return "first-rule";
    }

    @Override
    public String version() {
        return "0.1.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.example.firstrule.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of(new LongNoteOnLittleFinger());
    }
}
