package org.mantice.rule;

import java.util.List;

/** The four families of rules, in the order in which their layers are planned. */
public enum RuleSet {
    REPEAT_VARIATION("repeat-variation", VariationStep.class),
    JUMP_COST("jump-cost", LeftHandStep.class),
    BELLOWS_POLICY("bellows-policy", BellowsStep.class),
    FINGERING_SPAN("fingering-span", RightHandStep.class);

    private final String id;
    private final Class<? extends Step> family;

    RuleSet(String id, Class<? extends Step> family) {
        this.id = id;
        this.family = family;
    }

    public String id() {
        return id;
    }

    /** The reaches that a rule of this set may declare. */
    public List<Class<?>> reaches() {
        return List.of(family.getPermittedSubclasses());
    }
}
