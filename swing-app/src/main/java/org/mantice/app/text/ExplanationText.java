package org.mantice.app.text;

import java.util.List;
import org.mantice.app.words.RuleWords;
import org.mantice.plan.Explanation;
import org.mantice.rule.Fact;
import org.mantice.rule.RuleProvider;

/** An explanation as an indented list, in English; titles and facts come from the packs' own bundles. */
public final class ExplanationText {
    private final List<? extends RuleProvider> packs;
    private final RuleWords words;

    public ExplanationText(List<? extends RuleProvider> packs) {
        this.packs = packs;
        this.words = RuleWords.plainEnglish(packs);
    }

    public List<? extends RuleProvider> packs() {
        return packs;
    }

    /** A rule's title, or its id where its pack has none. */
    public String title(String ruleId) {
        return words.title(ruleId);
    }

    /** The whole tree, without what costs nothing. */
    public String of(Explanation explanation) {
        StringBuilder text = new StringBuilder();
        append(text, explanation, "", 0);
        return text.toString();
    }

    private void append(StringBuilder text, Explanation node, String ruleId, int depth) {
        if (node.cost() == 0 && node.children().isEmpty() && depth > 1) return;
        text.append(String.format("%10s  ", ComparisonText.cost(node.cost()))).append("  ".repeat(depth));
        if (node.place().isEmpty()) text.append(title(node.key()));
        else text.append(node.place());
        for (Fact fact : node.facts()) text.append("; ").append(words.fact(ruleId, fact));
        text.append('\n');
        for (Explanation child : node.children())
            append(text, child, child.place().isEmpty() ? child.key() : ruleId, depth + 1);
    }
}
