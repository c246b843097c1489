package org.mantice.app.text;

import java.text.MessageFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import org.mantice.plan.Explanation;
import org.mantice.rule.Fact;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** An explanation as an indented list; titles and facts come from the packs' own bundles. */
public final class ExplanationText {
    private final Map<String, ResourceBundle> bundles = new HashMap<>();
    private final List<? extends RuleProvider> packs;

    public ExplanationText(List<? extends RuleProvider> packs, Locale locale) {
        this.packs = packs;
        for (RuleProvider pack : packs) {
            bundle(pack, locale).ifPresent(bundle -> {
                for (Rule<?> rule : pack.rules()) bundles.put(rule.info().id(), bundle);
                pack.leanings().forEach(leaning -> bundles.put(leaning.id(), bundle));
            });
        }
    }

    private static Optional<ResourceBundle> bundle(RuleProvider pack, Locale locale) {
        try {
            return Optional.of(ResourceBundle.getBundle(
                    pack.bundle(), locale, pack.getClass().getClassLoader()));
        } catch (MissingResourceException e) {
            return Optional.empty();
        }
    }

    public List<? extends RuleProvider> packs() {
        return packs;
    }

    /** A rule's title, or its id where its pack has none. */
    public String title(String ruleId) {
        return text(ruleId, ruleId + ".title", ruleId);
    }

    private String text(String ruleId, String key, String otherwise) {
        ResourceBundle bundle = bundles.get(ruleId);
        return bundle != null && bundle.containsKey(key) ? bundle.getString(key) : otherwise;
    }

    private String fact(String ruleId, Fact fact) {
        String pattern = text(ruleId, fact.key(), fact.key() + " " + fact.arguments());
        return new MessageFormat(pattern, Locale.ROOT).format(fact.arguments().toArray());
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
        for (Fact fact : node.facts()) text.append("; ").append(fact(ruleId, fact));
        text.append('\n');
        for (Explanation child : node.children())
            append(text, child, child.place().isEmpty() ? child.key() : ruleId, depth + 1);
    }
}
