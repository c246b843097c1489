package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.mantice.layer.Pricing;
import org.mantice.plan.Explanation;
import org.mantice.player.Taste;
import org.mantice.rule.ButtonMoment;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;

/** The tree of a plan: rule set, rule, place, facts. Asks the rules to explain, and checks that they stand by it. */
final class LeftHandExplanation {
    private final LeftHandScore score;
    private final Taste taste;
    private final Map<String, List<Explanation>> leaves = new TreeMap<>();

    private LeftHandExplanation(LeftHandScore score, Taste taste) {
        this.score = score;
        this.taste = taste;
    }

    static Explanation of(LeftHandScore score, int[] states, Taste taste) {
        LeftHandExplanation made = new LeftHandExplanation(score, taste);
        for (Rule<?> rule : score.tables.momentRules)
            made.leaves.put(rule.info().id(), new ArrayList<>());
        for (Rule<?> rule : score.tables.pairRules) made.leaves.put(rule.info().id(), new ArrayList<>());
        for (int i = 0; i < states.length; i++) made.stage(states, i);
        List<Explanation> rules = new ArrayList<>();
        made.leaves.forEach((id, places) -> rules.add(Explanation.sumOf(id, places)));
        return Explanation.sumOf(RuleSet.JUMP_COST.id(), rules);
    }

    private void stage(int[] states, int index) {
        Stage stage = score.stages.get(index);
        ButtonMoment moment = stage.space().moment(states[index]);
        for (Rule<ButtonMoment> rule : score.tables.momentRules)
            add(rule, Pricing.reasons(rule, moment, stage.where()), stage);
        if (index == 0) return;
        ButtonMoment before = score.stages.get(index - 1).space().moment(states[index - 1]);
        long available = stage.fromBefore().orElseThrow().table().availableMillis();
        for (var rule : score.tables.pairRules)
            add(rule, Pricing.reasons(rule, score.tables.pair(before, moment, available), stage.where()), stage);
    }

    private void add(Rule<?> rule, Reasons reasons, Stage stage) {
        if (reasons.cost() == 0) return;
        String id = rule.info().id();
        long cost = reasons.cost() == Rule.BAN ? 0 : Math.multiplyExact(reasons.cost(), (long) taste.perMille(id));
        leaves.computeIfAbsent(id, key -> new ArrayList<>())
                .add(Explanation.leaf("place", stage.where(), cost, reasons.facts()));
    }
}
