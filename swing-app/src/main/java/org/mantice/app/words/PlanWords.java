package org.mantice.app.words;

import java.util.List;
import java.util.Optional;
import org.mantice.rule.Leaning;
import org.mantice.rule.RuleProvider;

/** What plans are called: by letter and shape, and in words by how they came about. */
public final class PlanWords {
    private static final String LAYER_BY_LAYER = " layer by layer";

    private final Words words;
    private final RuleWords rules;
    private final List<Leaning> leanings;

    /** @param packs whose leanings have given plans their labels */
    public PlanWords(Words words, List<? extends RuleProvider> packs) {
        this.words = words;
        this.rules = new RuleWords(packs, words.locale());
        this.leanings = packs.stream().flatMap(pack -> pack.leanings().stream()).toList();
    }

    /**
     * The shape of a plan's mark.
     *
     * @param place among the plans compared, from 0; plans that are not compared, or are further back, have none
     */
    public static String shape(int place) {
        return switch (place) {
            case 0 -> "●";
            case 1 -> "◆";
            case 2 -> "■";
            case 3 -> "▲";
            default -> "";
        };
    }

    /** Letter and shape, as {@code "B ◆"}; the letter alone for plans that have no shape. */
    public static String mark(String letter, int place) {
        return (letter + " " + shape(place)).strip();
    }

    /** The engine's label in words; a label that the engine does not give, as from a plan made elsewhere, as it is. */
    public String label(String label) {
        if (label.endsWith(LAYER_BY_LAYER))
            return words.text(
                    "figures.label.layerByLayer", label(label.substring(0, label.length() - LAYER_BY_LAYER.length())));
        return switch (label) {
            case "best" -> words.text("figures.label.best");
            case "best that can be played" -> words.text("figures.label.bestPlayable");
            case "other turns" -> words.text("figures.label.turns");
            case "other fingers" -> words.text("figures.label.fingers");
            case "other buttons" -> words.text("figures.label.buttons");
            case "other registers" -> words.text("figures.label.registers");
            default -> leaning(label).map(rules::title).orElse(label);
        };
    }

    private Optional<Leaning> leaning(String id) {
        return leanings.stream().filter(leaning -> leaning.id().equals(id)).findFirst();
    }
}
