package org.mantice.rule.variation;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.mantice.rule.Leaning;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.RuleSet;

/** The table of contents of our own repeat variation rules. */
public final class VariationRules implements RuleProvider {
    @Override
    public String id() {
        return "mantice.variation";
    }

    @Override
    public String version() {
        return "0.1.0";
    }

    @Override
    public String bundle() {
        return "org.mantice.rule.variation.texts";
    }

    @Override
    public List<Rule<?>> rules() {
        return List.of(
                new PlainFirstPass(),
                new WrittenPitch(),
                new OctaveMove(),
                new ShrillOrMuddy(),
                new HungryRegister(),
                new SameSoundAgain(),
                new GrowingSound());
    }

    @Override
    public List<Leaning> leanings() {
        return List.of(
                leaning("build-up", Map.of("variation.growing", 3_000, "variation.same-sound", 1_500)),
                leaning("dance-steady", Map.of("variation.same-sound", 0, "variation.octave-move", 3_000)),
                leaning("light-registers", Map.of("variation.hungry-register", 6_000)));
    }

    private static Leaning leaning(String id, Map<String, Integer> weights) {
        return new Leaning(id, RuleSet.REPEAT_VARIATION, new TreeMap<>(weights));
    }
}
