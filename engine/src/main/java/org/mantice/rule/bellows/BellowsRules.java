package org.mantice.rule.bellows;

import java.util.List;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** The table of contents of our own bellows rules. */
public final class BellowsRules implements RuleProvider {
    @Override
    public String id() {
        return "mantice.bellows";
    }

    @Override
    public String version() {
        return "0.1.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.rule.bellows.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of(
                new Turns(),
                new PlaceGrade(),
                new PickupBarline(),
                new StolenTime(),
                new TurnUnderJump(),
                new WholePhrases(),
                new EvenStrokes(),
                new LittleBellows(),
                new ComfortableOpening(),
                new InsideSlur(),
                new UnderHeldChord());
    }
}
