package org.mantice.rule.lefthand;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.mantice.rule.Leaning;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.RuleSet;

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
    public List<Leaning> leanings() {
        return List.of(
                leaning("still-left-hand", Map.of("left-hand.hand-move", 2_500, "left-hand.wide-jump", 2_500)),
                leaning("full-harmony", Map.of("left-hand.missing-tones", 4_000, "left-hand.foreign-tones", 2_000)),
                leaning("colourful-bass", Map.of("left-hand.bass-variety", 3_000, "left-hand.counterbass-reach", 250)),
                leaning("roots-only", Map.of("left-hand.bass-variety", 0)));
    }

    private static Leaning leaning(String id, Map<String, Integer> weights) {
        return new Leaning(id, RuleSet.JUMP_COST, new TreeMap<>(weights));
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
                new DividedChord(),
                new BlindLanding(),
                new SameFinger(),
                new ChangedFinger(),
                new CrossedFingers());
    }
}
