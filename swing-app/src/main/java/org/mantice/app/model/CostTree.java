package org.mantice.app.model;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.plan.Explanation;
import org.mantice.rule.RuleSet;

/**
 * What a plan pays for, or pays more for than another, in words: layers, rules, places, at each level the largest sum
 * first, whether it is paid more or less. What costs nothing is left out.
 *
 * @param cost micropoints, negative where the first of two plans pays less
 * @param about what the rule is about; empty for layers and places
 */
public record CostTree(String text, long cost, String about, List<CostTree> children) {
    private static final Comparator<CostTree> LARGEST_FIRST =
            Comparator.<CostTree>comparingLong(tree -> -Math.abs(tree.cost)).thenComparing(tree -> -tree.cost);

    public CostTree {
        children = List.copyOf(children);
    }

    /** Of one plan, or a part of it. @param title of the whole */
    public static CostTree of(Explanation explanation, String title, RuleWords rules, Words words) {
        return new Builder(rules, words, false, "").tree(explanation, title, "");
    }

    /**
     * Of one place of a plan.
     *
     * @param title of the whole
     * @param place in words, not said again of what is paid there
     */
    static CostTree ofPlace(Explanation explanation, String title, String place, RuleWords rules, Words words) {
        return new Builder(rules, words, false, place).tree(explanation, title, "");
    }

    /** Of one plan's tree minus another's. @param title of the whole */
    public static CostTree ofDifference(Explanation difference, String title, RuleWords rules, Words words) {
        return new Builder(rules, words, true, "").tree(difference, title, "");
    }

    /** One line a node, indented by depth, as plain text. */
    public String lines() {
        StringBuilder lines = new StringBuilder();
        append(lines, "");
        return lines.toString();
    }

    private void append(StringBuilder lines, String indent) {
        lines.append(indent).append(text).append('\n');
        for (CostTree child : children) child.append(lines, indent + "  ");
    }

    private record Builder(RuleWords rules, Words words, boolean signed, String known) {
        CostTree tree(Explanation node, String title, String ruleId) {
            List<CostTree> children = node.children().stream()
                    .filter(child -> child.cost() != 0 || !child.children().isEmpty())
                    .map(child -> child.place().isEmpty()
                            ? tree(child, title(child.key()), child.key())
                            : tree(child, place(child, ruleId), ruleId))
                    .sorted(LARGEST_FIRST)
                    .toList();
            return new CostTree(
                    words.text("differences.paid", amount(node.cost()), title),
                    node.cost(),
                    node.place().isEmpty() ? rules.about(node.key()) : "",
                    children);
        }

        private String amount(long cost) {
            String amount = new MusicWords(words).cost(Math.abs(cost));
            return !signed || cost == 0 ? amount : cost > 0 ? "+" + amount : "−" + amount;
        }

        private String title(String key) {
            Optional<RuleSet> layer = Arrays.stream(RuleSet.values())
                    .filter(set -> set.id().equals(key))
                    .findFirst();
            return layer.map(new MusicWords(words)::ruleSet).orElseGet(() -> rules.title(key));
        }

        private String place(Explanation leaf, String ruleId) {
            String place = new MusicWords(words).place(leaf.place());
            if (leaf.facts().isEmpty()) return place;
            return leaf.facts().stream()
                    .map(fact -> rules.fact(ruleId, fact))
                    .collect(Collectors.joining("; ", place.equals(known) ? "" : place + ": ", ""));
        }
    }
}
