package org.mantice.rule.bellows;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.mantice.rule.Leaning;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.RuleSet;

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
                new InsideSlur());
    }

    @Override
    public List<Leaning> leanings() {
        return List.of(
                leaning("few-turns", Map.of("bellows.turns", 4_000, "bellows.opening", 300)),
                leaning("little-bellows", Map.of("bellows.opening", 4_000, "bellows.turns", 500)),
                leaning("hidden-turns", Map.of("bellows.place", 3_000, "bellows.stolen-time", 3_000)));
    }

    private static Leaning leaning(String id, Map<String, Integer> weights) {
        return new Leaning(id, RuleSet.BELLOWS_POLICY, new TreeMap<>(weights));
    }
}
