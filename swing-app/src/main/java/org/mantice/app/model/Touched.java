package org.mantice.app.model;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.mantice.layer.RuleBook;
import org.mantice.plan.Lock;
import org.mantice.player.Taste;
import org.mantice.rule.RuleSet;

/** Which layers a change of weights and locks touches. */
final class Touched {
    private Touched() {}

    /** In the order in which they are planned; later layers that only rest on these are left out. */
    static List<RuleSet> layers(Setup before, Setup after, RulesInForce rules) {
        EnumSet<RuleSet> layers = EnumSet.noneOf(RuleSet.class);
        Taste old = before.player().taste();
        Taste now = after.player().taste();
        for (RuleBook.Entry entry : rules.without(Set.of()).entries())
            if (old.perMille(entry.id()) != now.perMille(entry.id()))
                layers.add(entry.rule().info().ruleSet());
        Set<Lock> changed = new HashSet<>(before.locks());
        changed.addAll(after.locks());
        for (Lock lock : changed)
            if (before.locks().contains(lock) != after.locks().contains(lock)) layers.add(Locks.layer(lock));
        return List.copyOf(layers);
    }
}
