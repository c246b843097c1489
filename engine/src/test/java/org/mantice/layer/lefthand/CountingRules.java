package org.mantice.layer.lefthand;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.Step;
import org.mantice.rule.lefthand.LeftHandRules;

/** Our own left-hand rules, counting calls for a cost. */
final class CountingRules implements RuleProvider {
    private final AtomicLong calls = new AtomicLong();
    /** Makes every rule give a cost that is not allowed. */
    boolean negative;
    /** Makes every rule explain another number than its cost. */
    boolean lying;

    long calls() {
        return calls.get();
    }

    @Override
    public String id() {
        return "test.counting";
    }

    @Override
    public String version() {
        return "1.0.0";
    }

    @Override
    public String bundle() {
        return "none";
    }

    @Override
    public List<Rule<?>> rules() {
        return new LeftHandRules().rules().stream().<Rule<?>>map(this::counting).toList();
    }

    private <S extends Step> Rule<S> counting(Rule<S> rule) {
        return new Rule<>() {
            @Override
            public RuleInfo info() {
                return rule.info();
            }

            @Override
            public Class<S> reach() {
                return rule.reach();
            }

            @Override
            public long cost(S step) {
                calls.incrementAndGet();
                return negative ? -7 : rule.cost(step);
            }

            @Override
            public Reasons explain(S step) {
                Reasons reasons = rule.explain(step);
                return lying ? new Reasons(reasons.cost() + 1, reasons.facts()) : reasons;
            }
        };
    }
}
