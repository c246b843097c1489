package org.mantice.plugins.firstyear;

import static org.mantice.plugins.firstyear.Moments.pass;

import java.util.List;
import org.mantice.rule.PassPair;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleContract;
import org.mantice.rule.RuleProvider;

class OneSoundTest extends RuleContract<PassPair> {
    @Override
    protected RuleProvider provider() {
        return new FirstYearPack();
    }

    @Override
    protected Rule<PassPair> rule() {
        return new OneSound();
    }

    @Override
    protected List<PassPair> steps() {
        return List.of(
                new PassPair(pass(1, "clarinet", 0), pass(2, "clarinet", 0)),
                new PassPair(pass(1, "clarinet", 0), pass(2, "clarinet", 1)),
                new PassPair(pass(1, "clarinet", 0), pass(2, "bassoon", 0)));
    }
}
