package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

    /** A named set of weights to start from. */
    public record Start(Leaning leaning, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    /**
     * A rule.
     *
     * @param perMille its weight; 0 is off
     * @param changed whether the weight is not the rule's own
     * @param cost what the chosen plan pays for it, in words
     * @param pack the pack that it comes from, where it comes from a jar
     */
    public record Row(
            String ruleId,
            String title,
            String about,
            int perMille,
            boolean changed,
            String cost,
            Optional<String> pack) {
        /** Whether the rule speaks of what is searched for; empty finds every rule. */
        public boolean matches(String text) {
            String wanted = text.strip().toLowerCase(Locale.ROOT);
            return title.toLowerCase(Locale.ROOT).contains(wanted)
                    || about.toLowerCase(Locale.ROOT).contains(wanted)
                    || ruleId.contains(wanted);
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
                    if (leaning.ruleSet() == set) starts.add(new Start(leaning, rules.title(leaning)));
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
        return new Row(
                id,
                rules.title(id),
                rules.about(id),
                taste.perMille(id),
                taste.perMille(id) != Taste.DEFAULT_PER_MILLE,
                cost(state, id, words),
                from);
    }

    private static String cost(PlannerState state, String id, Words words) {
        Taste taste = state.setup().player().taste();
        return state.chosenOffer()
                .flatMap(offer -> offer.plan().layers().stream()
                        .flatMap(layer -> Optional.ofNullable(layer.costByRule().get(id)).stream())
                        .findFirst()
                        .map(cost -> Math.multiplyExact(cost, (long) taste.perMille(id))))
                .map(cost -> words.text("taste.pays", new MusicWords(words).cost(cost)))
                .orElse("");
    }
}
