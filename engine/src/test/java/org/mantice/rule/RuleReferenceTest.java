package org.mantice.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.mantice.plugin.Packs;

/** The page {@code engine/docs/rules.md} says what the rules themselves say. */
class RuleReferenceTest {
    @Test
    void referencePageIsWhatTheRulesSay() throws IOException {
        Path page = Path.of(System.getProperty("mantice.root", "..")).resolve("engine/docs/rules.md");
        String generated = page();
        if (Boolean.getBoolean("mantice.write.docs")) Files.writeString(page, generated);

        assertThat(Files.readString(page))
                .as("engine/docs/rules.md is old; write it anew with -Dmantice.write.docs=true")
                .isEqualTo(generated);
    }

    private static String page() {
        StringBuilder text = new StringBuilder("""
                # Rules

                Made from the rules themselves by `RuleReferenceTest`. Costs are millipoints: 1,000 are one ordinary change of
                hand position at a quarter note at 100. A ban gives way only when nothing else is left.
                """);
        for (RuleSet set : RuleSet.values()) {
            text.append("\n## ").append(set.id()).append('\n');
            for (RuleProvider pack : Packs.ofClassPath().providers()) {
                ResourceBundle bundle = ResourceBundle.getBundle(
                        pack.bundle(), Locale.ROOT, pack.getClass().getClassLoader());
                for (Rule<?> rule : pack.rules()) if (rule.info().ruleSet() == set) append(text, rule, bundle);
                for (Leaning leaning : pack.leanings())
                    if (leaning.ruleSet() == set)
                        text.append("\nLeaning *")
                                .append(bundle.getString(leaning.id() + ".leaning"))
                                .append("* (`")
                                .append(leaning.id())
                                .append("`): ")
                                .append(leaning.weights())
                                .append(" per mille\n");
            }
        }
        return text.toString();
    }

    private static void append(StringBuilder text, Rule<?> rule, ResourceBundle bundle) {
        RuleInfo info = rule.info();
        text.append("\n### ")
                .append(bundle.getString(info.id() + ".title"))
                .append("\n\n`")
                .append(info.id());
        text.append("`, looks at a `").append(rule.reach().getSimpleName()).append("`. ");
        text.append(bundle.getString(info.id() + ".text")).append('\n');
        text.append("\nSource: ").append(info.source()).append('.');
        info.banGivesWay().ifPresent(ban -> text.append(" Its ban gives way as: ")
                .append(ban.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .append('.'));
        text.append('\n');
    }
}
