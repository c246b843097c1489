package org.mantice.app.model;

import java.util.HashMap;
import java.util.Map;
import org.mantice.player.Taste;

/** Switches rules off and on; on again, a rule has the weight that it had before. */
public final class SwitchedOff {
    private final Map<String, Integer> before = new HashMap<>();

    /** Remembers the weights of the rules that are on. Not while one is dragged: what it passes is not meant. */
    public void remember(Taste taste) {
        before.keySet().retainAll(taste.weights().keySet());
        taste.weights().forEach((rule, weight) -> {
            if (weight > 0) before.put(rule, weight);
        });
    }

    /** The taste with the rule switched; as it is if the rule is so already. */
    public Taste switched(Taste taste, String ruleId, boolean on) {
        int now = taste.perMille(ruleId);
        if (on == now > 0) return taste;
        if (on) return taste.with(ruleId, before.getOrDefault(ruleId, Taste.DEFAULT_PER_MILLE));
        before.put(ruleId, now);
        return taste.with(ruleId, 0);
    }
}
