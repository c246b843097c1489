package org.mantice.layer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.mantice.plan.Concession;
import org.mantice.rule.Rule;
import org.mantice.tune.WrittenPlace;

/** Adds up what each rule charges a plan, and lists the bans that gave way; rules that charge nothing are named too. */
public final class Ledger {
    private final SortedMap<String, Long> costs = new TreeMap<>();
    private final List<Concession> concessions = new ArrayList<>();

    public Ledger(Iterable<? extends Rule<?>> rules) {
        for (Rule<?> rule : rules) costs.put(rule.info().id(), 0L);
    }

    /** @param cost millipoints, or {@link Rule#BAN} for a ban that gave way */
    public void add(Rule<?> rule, long cost, int pass, WrittenPlace place) {
        String id = rule.info().id();
        if (cost == Rule.BAN) concede(new Concession(rule.info().banGivesWay().orElseThrow(), id, pass, place));
        else costs.merge(id, cost, Math::addExact);
    }

    public void concede(Concession concession) {
        concessions.add(concession);
    }

    /** Millipoints by rule. */
    public SortedMap<String, Long> costs() {
        return new TreeMap<>(costs);
    }

    /** By pass, place and rule. */
    public List<Concession> concessions() {
        return concessions.stream()
                .sorted(Comparator.comparingInt(Concession::pass)
                        .thenComparing(Concession::place)
                        .thenComparing(Concession::ruleId))
                .toList();
    }
}
