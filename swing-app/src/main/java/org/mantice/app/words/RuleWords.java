package org.mantice.app.words;

import java.text.MessageFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.UnaryOperator;
import org.mantice.rule.Fact;
import org.mantice.rule.Leaning;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleProvider;

/** What rules and leanings are called and what their facts say, from the packs' own bundles. */
public final class RuleWords {
    private final Map<String, ResourceBundle> bundles = new HashMap<>();
    private final UnaryOperator<String> argument;

    /** @param locale English where a pack does not speak the language */
    public RuleWords(List<? extends RuleProvider> packs, Locale locale) {
        this(packs, locale, new EngineWords(Words.of(locale))::said);
    }

    private RuleWords(List<? extends RuleProvider> packs, Locale locale, UnaryOperator<String> argument) {
        this.argument = argument;
        for (RuleProvider pack : packs)
            bundle(pack, locale).ifPresent(bundle -> {
                for (Rule<?> rule : pack.rules()) bundles.put(rule.info().id(), bundle);
                pack.leanings().forEach(leaning -> bundles.put(leaning.id(), bundle));
            });
    }

    /** In English, whatever the system speaks, and with the engine's own spelling of notes. */
    public static RuleWords plainEnglish(List<? extends RuleProvider> packs) {
        return new RuleWords(packs, Locale.ENGLISH, UnaryOperator.identity());
    }

    private static Optional<ResourceBundle> bundle(RuleProvider pack, Locale locale) {
        try {
            return Optional.of(ResourceBundle.getBundle(
                    pack.bundle(),
                    locale,
                    pack.getClass().getClassLoader(),
                    ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
        } catch (MissingResourceException e) {
            return Optional.empty();
        }
    }

    /** A rule's title, or its id where its pack has none. */
    public String title(String ruleId) {
        return text(ruleId, ruleId + ".title", ruleId);
    }

    /** What a rule is about, in a sentence or two; empty where its pack says nothing. */
    public String about(String ruleId) {
        return text(ruleId, ruleId + ".text", "");
    }

    /** A leaning's title, or its id. */
    public String title(Leaning leaning) {
        return text(leaning.id(), leaning.id() + ".leaning", leaning.id());
    }

    public String fact(String ruleId, Fact fact) {
        String pattern = text(ruleId, fact.key(), fact.key() + " " + fact.arguments());
        return new MessageFormat(pattern, Locale.ROOT)
                .format(fact.arguments().stream().map(argument).toArray());
    }

    private String text(String id, String key, String otherwise) {
        ResourceBundle bundle = bundles.get(id);
        return bundle != null && bundle.containsKey(key) ? bundle.getString(key) : otherwise;
    }
}
