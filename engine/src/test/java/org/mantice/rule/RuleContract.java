package org.mantice.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

/**
 * What every rule owes the engine. A rule's own test extends this class, names the rule and its pack, and lists steps
 * of which at least one costs something.
 *
 * @param <S> the rule's reach
 */
public abstract class RuleContract<S extends Step> {
    protected abstract RuleProvider provider();

    protected abstract Rule<S> rule();

    /** Steps that cover what the rule charges for; at least one with a cost above 0 or a ban, at least one with 0. */
    protected abstract List<S> steps();

    @Test
    void costIsNeverNegativeAndFitsAnInt() {
        for (S step : steps()) {
            long cost = rule().cost(step);
            if (cost != Rule.BAN) assertThat(cost).as("%s", step).isBetween(0L, (long) Integer.MAX_VALUE);
        }
    }

    @Test
    void explanationGivesTheSameNumberAsTheCost() {
        for (S step : steps())
            assertThat(rule().explain(step).cost()).as("%s", step).isEqualTo(rule().cost(step));
    }

    @Test
    void whatCostsSomethingHasAFactAndWhatCostsNothingHasNone() {
        for (S step : steps())
            assertThat(rule().explain(step).facts().isEmpty()).as("%s", step).isEqualTo(rule().cost(step) == 0);
    }

    @Test
    void sameStepGivesTheSameAnswer() {
        for (S step : steps()) {
            assertThat(rule().cost(step)).isEqualTo(rule().cost(step));
            assertThat(rule().explain(step)).isEqualTo(rule().explain(step));
        }
    }

    @Test
    void stepsShowTheRuleAtWorkAndAtRest() {
        assertThat(steps()).anyMatch(step -> rule().cost(step) > 0).anyMatch(step -> rule().cost(step) == 0);
    }

    @Test
    void bansSayHowTheyGiveWay() {
        assertThat(steps())
                .allMatch(step -> rule().cost(step) != Rule.BAN
                        || rule().info().banGivesWay().isPresent());
    }

    @Test
    void reachIsOneOfTheRuleSet() {
        assertThat(rule().info().ruleSet().reaches()).contains(rule().reach());
    }

    @Test
    void packListsTheRuleAndItsBundleHasEveryText() {
        assertThat(provider().rules())
                .extracting(rule -> rule.info().id())
                .contains(rule().info().id());
        ResourceBundle bundle = ResourceBundle.getBundle(
                provider().bundle(), Locale.ROOT, provider().getClass().getClassLoader());
        assertThat(bundle.getString(rule().info().id() + ".title")).isNotBlank();
        assertThat(bundle.getString(rule().info().id() + ".text")).isNotBlank();
        for (S step : steps())
            for (Fact fact : rule().explain(step).facts())
                assertThat(new MessageFormat(bundle.getString(fact.key()), Locale.ROOT)
                                .format(fact.arguments().toArray()))
                        .as("%s", fact)
                        .isNotBlank()
                        .doesNotContain("{");
    }
}
