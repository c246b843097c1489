package org.mantice.rule.righthand;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** The table of contents of our own fingering rules. */
public final class RightHandRules implements RuleProvider {
    @Override
    public String id() {
        return "mantice.right-hand";
    }

    @Override
    public String version() {
        return "0.1.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.rule.righthand.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of(
                new SpanOfFingers(),
                new SpanInChord(),
                new ReachFromPlace(),
                new ChangeOfPlace(),
                new ThumbPassing(),
                new ThumbAndFiveOnBlack(),
                new WeakFinger(),
                new ThreeFourFive(),
                new FourOnBlack(),
                new FingersOnOneKey(),
                new SlideOrLift(),
                new RestlessHand(),
                new AsPrinted());
    }
}
