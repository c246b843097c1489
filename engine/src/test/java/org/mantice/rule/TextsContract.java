package org.mantice.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What packs promise that speak German beside English: every text is there in both languages, with the same arguments.
 * A pack may be without German; then its English texts are shown.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class TextsContract {
    private static final Pattern ARGUMENT = Pattern.compile("\\{(\\d+)");

    /** The packs held to it, one or more. */
    protected abstract List<RuleProvider> packs();

    @ParameterizedTest
    @MethodSource("packs")
    void germanHasTheSameKeysAsEnglish(RuleProvider pack) {
        assertThat(new TreeSet<>(texts(pack, Locale.GERMAN).keySet()))
                .isEqualTo(new TreeSet<>(texts(pack, Locale.ENGLISH).keySet()));
        assertThat(texts(pack, Locale.GERMAN).getLocale()).isEqualTo(Locale.GERMAN);
    }

    @ParameterizedTest
    @MethodSource("packs")
    void germanSpeaksOfTheSameArguments(RuleProvider pack) {
        ResourceBundle english = texts(pack, Locale.ENGLISH);
        ResourceBundle german = texts(pack, Locale.GERMAN);

        for (String key : english.keySet())
            assertThat(arguments(german.getString(key)))
                    .as("arguments of %s", key)
                    .isEqualTo(arguments(english.getString(key)));
    }

    @ParameterizedTest
    @MethodSource("packs")
    void germanIsNotLeftInEnglish(RuleProvider pack) {
        ResourceBundle english = texts(pack, Locale.ENGLISH);
        ResourceBundle german = texts(pack, Locale.GERMAN);

        for (Rule<?> rule : pack.rules()) {
            String text = rule.info().id() + ".text";
            assertThat(german.getString(text)).isNotEqualTo(english.getString(text));
        }
    }

    private static SortedSet<String> arguments(String pattern) {
        assertThat(new MessageFormat(pattern, Locale.ROOT).toPattern()).isNotBlank();
        SortedSet<String> arguments = new TreeSet<>();
        Matcher found = ARGUMENT.matcher(pattern);
        while (found.find()) arguments.add(found.group(1));
        return arguments;
    }

    private static ResourceBundle texts(RuleProvider pack, Locale locale) {
        return ResourceBundle.getBundle(
                pack.bundle(),
                locale,
                pack.getClass().getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }
}
