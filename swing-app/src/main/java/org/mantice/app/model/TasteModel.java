package org.mantice.app.model;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.rule.Leaning;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleSet;

/** How much each rule counts for the player, in four groups, in words. */
public record TasteModel(List<Group> groups) {
    /** The rules of one set. */
    public record Group(RuleSet ruleSet, String name, List<Start> starts, List<Row> rows) {
        public Group {
            starts = List.copyOf(starts);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A named set of weights to start from.
     *
     * @param weights what it sets, one rule after the other
     */
    public record Start(Leaning leaning, String name, String weights) {}

    /**
     * A rule.
     *
     * @param perMille its weight; 0 is off
     * @param changed whether the weight is not the rule's own
     * @param paid micropoints that the chosen plan pays for it under the weights of now
     * @param state what is to be said of it besides its weight, in words: whether it is off or changed, what the chosen
     *     plan pays for it
     * @param pack the pack that it comes from, where it comes from a jar
     */
    public record Row(
            String ruleId,
            String title,
            String about,
            int perMille,
            boolean changed,
            long paid,
            String state,
            Optional<String> pack) {
        /** Whether all words searched for, or parts of them, are among the rule's; no words find every rule. */
        public boolean matches(String text) {
            String all =
                    String.join("\n", title, about, ruleId, pack.orElse("")).toLowerCase(Locale.ROOT);
            return Arrays.stream(text.strip().toLowerCase(Locale.ROOT).split("\\s+"))
                    .allMatch(all::contains);
        }
    }

    public TasteModel {
        groups = List.copyOf(groups);
    }

    public static TasteModel of(PlannerState state, Packs packs, RuleWords rules, Words words) {
        MusicWords music = new MusicWords(words);
        List<Group> groups = new ArrayList<>();
        for (RuleSet set : RuleSet.values()) {
            List<Row> rows = new ArrayList<>();
            List<Start> starts = new ArrayList<>();
            for (Packs.Pack pack : packs.packs()) {
                for (Rule<?> rule : pack.provider().rules())
                    if (rule.info().ruleSet() == set)
                        rows.add(row(state, pack, rule.info().id(), rules, words));
                for (Leaning leaning : pack.provider().leanings())
                    if (leaning.ruleSet() == set) starts.add(start(leaning, rules, words));
            }
            groups.add(new Group(set, music.ruleSet(set), starts, rows));
        }
        return new TasteModel(groups);
    }

    private static Row row(PlannerState state, Packs.Pack pack, String id, RuleWords rules, Words words) {
        Taste taste = state.setup().player().taste();
        Optional<String> from = pack.isFromJar()
                ? Optional.of(words.text(
                        "taste.pack", pack.provider().id(), pack.provider().version()))
                : Optional.empty();
        long paid = paid(state, id);
        return new Row(
                id,
                rules.title(id),
                rules.about(id),
                taste.perMille(id),
                taste.perMille(id) != Taste.DEFAULT_PER_MILLE,
                paid,
                said(taste, id, paid, words),
                from);
    }

    private static Start start(Leaning leaning, RuleWords rules, Words words) {
        String weights = leaning.weights().entrySet().stream()
                .map(weight ->
                        words.text("taste.weight", rules.title(weight.getKey()), percent(weight.getValue(), words)))
                .collect(Collectors.joining("; "));
        return new Start(leaning, rules.title(leaning), weights);
    }

    /** As the language writes it, exactly. */
    public static String percent(int perMille, Words words) {
        return NumberFormat.getNumberInstance(words.locale()).format(BigDecimal.valueOf(perMille, 1));
    }

    private static String said(Taste taste, String id, long paid, Words words) {
        List<String> said = new ArrayList<>();
        if (taste.perMille(id) == 0) said.add(words.text("taste.off"));
        else if (taste.perMille(id) != Taste.DEFAULT_PER_MILLE) said.add(words.text("taste.changed"));
        if (paid != 0) said.add(words.text("taste.pays", new MusicWords(words).cost(paid)));
        return String.join(" · ", said);
    }

    /** Micropoints that the chosen plan pays for a rule under the weights of now. */
    private static long paid(PlannerState state, String id) {
        long weight = state.setup().player().taste().perMille(id);
        return state.chosenOffer()
                .flatMap(offer -> offer.plan().layers().stream()
                        .flatMap(layer -> Optional.ofNullable(layer.costByRule().get(id)).stream())
                        .findFirst()
                        .map(cost -> Math.multiplyExact(cost, weight)))
                .orElse(0L);
    }
}
