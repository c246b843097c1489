package org.mantice.layer.lefthand;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.ButtonNames;
import org.mantice.instrument.StradellaBass;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.performance.Performance;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.BassMethod;
import org.mantice.player.Jumps;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.lefthand.LeftHandRules;
import org.mantice.tune.Meter;
import org.mantice.tune.Tempo;

/** Layers of the left hand for tests, and plans in words. */
final class LeftHands {
    static final VariationPlan NO_VARIATION = new VariationPlan(List.of(), new TreeMap<>(Map.of()), List.of());
    static final RuleBook RULES = RuleBook.of(List.of(new LeftHandRules()));

    private LeftHands() {}

    static Accordion accordion(StradellaBass bass) {
        Accordion full = AccordionPresets.get("full-41-key-120-bass");
        return new Accordion("test", "Test", full.treble(), bass, full.bellows());
    }

    static Player player(BassMethod method) {
        return new Player("test", "Test", 95, method, Jumps.ESTIMATE, false, Taste.PLAIN);
    }

    static LeftHandLayer layer(Performance performance, int buttons, BassMethod method, RuleBook book) {
        return LeftHandLayer.of(
                performance, NO_VARIATION, accordion(StradellaBass.ofSize(buttons)), player(method), book);
    }

    static LeftHandLayer layer(Performance performance, int buttons, RuleProvider... packs) {
        return layer(performance, buttons, BassMethod.FOUR_THREE_TWO, RuleBook.of(List.of(packs)));
    }

    static LeftHandLayer layer(Performance performance, int buttons) {
        return layer(performance, buttons, BassMethod.FOUR_THREE_TWO, RULES);
    }

    static LeftHandPlan best(LeftHandLayer layer) {
        return found(layer.best(Question.best(Taste.PLAIN))).best();
    }

    static Outcome.Found<LeftHandPlan> found(Outcome<LeftHandPlan> outcome) {
        if (outcome instanceof Outcome.Found<LeftHandPlan> found) return found;
        throw new AssertionError("not found: " + outcome);
    }

    static Performance waltz(int passes, String chords) {
        return PlayedTune.of(Meter.of(3, 4), Tempo.quarters(150), passes, chords);
    }

    static Performance inFour(int passes, String chords) {
        return PlayedTune.of(Meter.of(4, 4), Tempo.quarters(100), passes, chords);
    }

    /** As {@code "C bass 4 | C major 3"}. */
    static String words(LeftHandPlan plan) {
        return plan.events().stream().map(LeftHands::words).collect(Collectors.joining(" | "));
    }

    static String words(LeftHandPlan.Event event) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < event.buttons().size(); i++)
            words.append(i == 0 ? "" : " + ")
                    .append(ButtonNames.of(event.buttons().get(i)))
                    .append(' ')
                    .append(event.fingers().get(i));
        return words.toString();
    }
}
