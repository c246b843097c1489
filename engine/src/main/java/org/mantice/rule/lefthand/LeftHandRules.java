package org.mantice.rule.lefthand;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** The table of contents of our own left-hand rules. */
public final class LeftHandRules implements RuleProvider {
    @Override
    public String id() {
        return "mantice.left-hand";
    }

    @Override
    public String version() {
        return "0.1.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.rule.lefthand.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of(
                new MissingTones(),
                new ForeignTones(),
                new Substitutes(),
                new ManyButtons(),
                new BassVariety(),
                new CounterbassReach(),
                new FingerMethod(),
                new WeakFinger(),
                new Stretch(),
                new HandMove(),
                new WideJump(),
                new BlindLanding(),
                new SameFinger(),
                new ChangedFinger(),
                new CrossedFingers());
    }
}
