package org.mantice.layer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.mantice.rule.Leaning;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Step;

/** The rules in force, checked at registration: ids unique, reach within the rule set's own. */
public final class RuleBook {
    /** A rule with the pack that brought it. */
    public record Entry(RuleProvider provider, Rule<?> rule) {
        public String id() {
            return rule.info().id();
        }
    }

    private final List<Entry> entries;
    private final List<Leaning> leanings;

    private RuleBook(List<Entry> entries, List<Leaning> leanings) {
        this.entries = List.copyOf(entries);
        this.leanings = List.copyOf(leanings);
    }

    /** @throws IllegalArgumentException if two rules share an id, or a rule asks for a longer view than its set has */
    public static RuleBook of(List<? extends RuleProvider> providers) {
        List<Entry> entries = new ArrayList<>();
        List<Leaning> leanings = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (RuleProvider provider : providers) {
            leanings.addAll(provider.leanings());
            for (Rule<?> rule : provider.rules()) {
                String id = rule.info().id();
                if (!ids.add(id))
                    throw new IllegalArgumentException(
                            "rule id " + id + " of pack " + provider.id() + " is taken; allowed: each id once");
                if (!rule.info().ruleSet().reaches().contains(rule.reach()))
                    throw new IllegalArgumentException("reach of rule " + id + " is "
                            + rule.reach().getSimpleName() + "; allowed: "
                            + rule.info().ruleSet().reaches().stream()
                                    .map(Class::getSimpleName)
                                    .toList());
                entries.add(new Entry(provider, rule));
            }
        }
        return new RuleBook(entries, leanings);
    }

    /**
     * The book without one rule, as if its pack did not have it.
     *
     * @throws IllegalArgumentException if there is no such rule
     */
    public RuleBook without(String ruleId) {
        List<Entry> others =
                entries.stream().filter(entry -> !entry.id().equals(ruleId)).toList();
        if (others.size() == entries.size())
            throw new IllegalArgumentException("rule is " + ruleId + "; allowed: "
                    + String.join(", ", entries.stream().map(Entry::id).toList()));
        return new RuleBook(others, leanings);
    }

    public List<Entry> entries() {
        return entries;
    }

    /** The leanings of one set, in the order of the packs. */
    public List<Leaning> leanings(RuleSet set) {
        return leanings.stream().filter(leaning -> leaning.ruleSet() == set).toList();
    }

    /** The rules of one set, in the order of the book. */
    public List<Rule<?>> rules(RuleSet set) {
        List<Rule<?>> rules = new ArrayList<>();
        for (Entry entry : entries) if (entry.rule().info().ruleSet() == set) rules.add(entry.rule());
        return List.copyOf(rules);
    }

    /** The rules of one set with one reach, in the order of the book. */
    @SuppressWarnings("unchecked")
    public <S extends Step> List<Rule<S>> rules(RuleSet set, Class<S> reach) {
        List<Rule<S>> rules = new ArrayList<>();
        for (Rule<?> rule : rules(set)) if (rule.reach() == reach) rules.add((Rule<S>) rule);
        return List.copyOf(rules);
    }
}
